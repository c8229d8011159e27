// SPDX-License-Identifier: MIT
#pragma once
// A table that comes back as CSV, from a spreadsheet or from another group: which edits it asks for,
// and what is said of each row. Rows are known by their piece's number, columns by their headings, as
// table_rows() writes them. Only what pupils write themselves is taken (lengths by hand, who measured,
// notes) and triangles of three sides under numbers that are not there; an empty cell changes nothing.

#include <string>
#include <vector>

#include "engine/edit.h"

namespace boughwork {

struct TakenIn {
    std::vector<Edit> edits;         ///< Each can be carried out after those before it.
    std::vector<std::string> taken;  ///< "Piece 4: measured by hand."
    std::vector<std::string> left;   ///< What was not taken, and why: "Line 7: ..."
};

/// A Problem when it is no CSV, or no table of pieces.
Result<TakenIn> taken_in(const Scene& scene, const std::string& csv);

}  // namespace boughwork
