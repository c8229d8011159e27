# SPDX-License-Identifier: MIT
"""One HTML file out of many:  assemble.py FOLDER PROGRAM.js ICON.svg LICENCES.txt PAGE.html

FOLDER is gui/web/page. The page's policy names its two scripts by their SHA-256 and allows nothing else to be run,
and nothing to be asked of any machine (Content Security Policy Level 3).
"""
import base64
import hashlib
import html
import pathlib
import sys

SCRIPTS = ["storage.js", "files.js", "text.js", "keys.js", "groups.js", "start.js"]


def policy(scripts):
    sums = (base64.b64encode(hashlib.sha256(script.encode()).digest()).decode() for script in scripts)
    allowed = " ".join(f"'sha256-{sum}'" for sum in sums)
    return (
        f"default-src 'none'; script-src {allowed} 'wasm-unsafe-eval'; style-src 'unsafe-inline'; "
        "img-src data: blob:; connect-src data:; base-uri 'none'; form-action 'none'"
    )


def main(folder, program, icon, licences, page):
    read = lambda path: pathlib.Path(path).read_text(encoding="utf-8")
    page_script = "\n".join(read(pathlib.Path(folder) / name) for name in SCRIPTS)
    program_script = read(program)
    for script in (page_script, program_script):
        assert "</script" not in script, "a script would end before its end"
    icon_url = "data:image/svg+xml;base64," + base64.b64encode(read(icon).encode()).decode()
    parts = {
        "policy": policy([page_script, program_script]),
        "icon": icon_url,
        "style": read(pathlib.Path(folder) / "page.css"),
        "licences": html.escape(read(licences)),
        "page": page_script,
        "program": program_script,
    }
    # Piece by piece, so that nothing is looked for in what was put in.
    text = read(pathlib.Path(folder) / "page.html")
    made = ""
    while "{{" in text:
        before, _, rest = text.partition("{{")
        name, _, text = rest.partition("}}")
        made += before + parts[name]
    pathlib.Path(page).write_text(made + text, encoding="utf-8", newline="")


main(*sys.argv[1:])
