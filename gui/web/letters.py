# SPDX-License-Identifier: MIT
"""Writes fonts with the window's letters alone:  letters.py fonts.cpp FROM TO [FROM TO ...]

The ranges are those of gui/window/fonts.cpp. A letter that an earlier font has is left out of the later ones.
The new fonts have no name, since a reserved one may not be borne by a changed font (SIL Open Font License 1.1, 3).
"""
import re
import sys

from fontTools import subset, ttLib


def letters_of(source):
    ranges = re.search(r"all_letters\[\] = \{(.*?)\};", source, re.S).group(1)
    bounds = [int(number, 16) for number in re.findall(r"0x[0-9A-F]+", ranges)]
    return {letter for first, last in zip(bounds[::2], bounds[1::2]) for letter in range(first, last + 1)}


def main(fonts_cpp, *paths):
    with open(fonts_cpp, encoding="utf-8") as file:
        wanted = letters_of(file.read())
    options = subset.Options(hinting=False, layout_features=[], name_IDs=[], notdef_outline=True)
    for path, reduced in zip(paths[::2], paths[1::2]):
        font = ttLib.TTFont(path)
        here = wanted & set(font.getBestCmap())
        subsetter = subset.Subsetter(options)
        subsetter.populate(unicodes=here)
        subsetter.subset(font)
        font.save(reduced)
        wanted -= here


main(*sys.argv[1:])
