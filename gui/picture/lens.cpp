// SPDX-License-Identifier: MIT
#include "gui/picture/lens.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>
#include <string>

#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"
#include "engine/words/say.h"
#include "gui/picture/finding_mark.h"
#include "gui/picture/outline.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_marks.h"
#include "gui/picture/tree_marks.h"

namespace boughwork {
namespace {

constexpr double radius_px = 96;
constexpr double handle_length_px = 54;
constexpr double rim_px = 6;
constexpr double shown_share = 1.1;   // of the radius, for the gap that is to be seen
constexpr double least_shown_mm = 5;  // a lens on a tenth of a millimetre would show nothing around it
constexpr double beside_px = 22;      // from the gap that is there to the gap that is allowed
constexpr double below_rim_px = 5;    // the slip hangs below the rim
constexpr double off_bars_px = 10;    // numbers keep off both

/// What the challenge's tolerance means for a rule.
enum class Allowed { more_than_this, at_most_this };

std::optional<Allowed> allowed(const Finding& finding) {
    if (finding.unit != AmountIn::mm) return std::nullopt;
    switch (finding.rule) {
        case Rule::ground:
        case Rule::trunk:
        case Rule::other_branch:
        case Rule::touching: return Allowed::more_than_this;
        case Rule::overlap:
        case Rule::over_a_branch:
        case Rule::runs_past_the_end: return Allowed::at_most_this;
        default: return std::nullopt;
    }
}

struct SeenPiece {
    Polygon outline_mm;
    const PieceReport* report = nullptr;
    bool in_finding = false;
};

std::vector<SeenPiece> hung_pieces(const Scene& scene, const Plan& plan, const Report& report, const Finding& finding) {
    std::vector<SeenPiece> pieces;
    for (const Hung& hung : plan.hung) {
        const Piece* piece = find_piece(scene, hung.piece);
        const PieceReport* verdict = find_piece(report, hung.piece);
        assert(piece && verdict && "the report is on this plan of this scene");
        pieces.push_back({posed(piece->shape, hung.pose).outline, verdict,
                          std::count(finding.pieces.begin(), finding.pieces.end(), hung.piece) > 0});
    }
    return pieces;
}

/// Near the target, within the view with its slip, where the lens hides least of the pieces; those
/// that the finding is about count most.
Vec2 lens_centre(const std::vector<SeenPiece>& pieces, Vec2 target, const Camera& camera, double radius, Vec2 slip_px) {
    const auto kept = [](double value, double low, double high) {
        return low < high ? std::clamp(value, low, high) : 0.5 * (low + high);
    };
    const PixelBox& view = camera.view;
    const double number_px = 0.25 * radius;  // which may stand beside the piece
    Vec2 best = target;
    double least = HUGE_VAL;
    constexpr int ways = 12;
    for (int i = 0; i < ways; ++i) {
        const Vec2 wanted = target + 1.65 * radius * turned_ccw({1, 0}, 2 * pi * i / ways);
        const double half_width = std::max(radius, 0.5 * slip_px.x);
        const Vec2 at{kept(wanted.x, view.x + half_width, view.x + view.width - half_width),
                      kept(wanted.y, view.y + radius, view.y + view.height - radius - slip_px.y)};
        const Polygon hidden = circle(at, 1.1 * radius);
        double cost = contains(hidden, target) ? 100 * radius * radius : 0;
        for (const SeenPiece& piece : pieces) {
            const Polygon outline = outline_px(camera, piece.outline_mm);
            cost += piece.in_finding ? 5 * signed_area(cut(grown(outline, number_px), hidden))
                                     : signed_area(cut(outline, hidden));
        }
        if (cost >= least) continue;
        least = cost;
        best = at;
    }
    return best;
}

/// The bars in the lens: the gap that is there, and beside it the gap that is allowed.
struct Bars {
    Vec2 from;
    Vec2 to;
    Vec2 way;     ///< Unit: where the allowed gap opens.
    Vec2 beside;  ///< Unit: from the one to the other.
};

Bars bars(const Finding& finding, const Camera& through, std::optional<Allowed> asks) {
    Bars b{.from = to_px(through, finding.where_mm.front()), .to = to_px(through, finding.where_mm.back())};
    // Where one shape should keep off and lies over the other, the needed gap opens the other way.
    const bool opens_back = asks == Allowed::more_than_this && finding.amount < 0;
    b.way = distance(b.from, b.to) < 1e-6 ? Vec2{0, 1} : (opens_back ? -1.0 : 1.0) * unit(b.to - b.from);
    b.beside = quarter_turned_ccw(b.way);
    return b;
}

/// The plan through the lens: fills and lines cut off at its rim.
class Looking {
public:
    Looking(std::vector<Mark>& marks, const Camera& through, const Polygon& rim, double scale)
        : marks_(marks), through_(through), rim_(rim), scale_(scale) {}

    void ground() {
        const double level = to_px(through_, {0, 0}).y;
        fill(cut(rim_, half_plane({0, level}, {0, 1})), palette::ground);
        const Box box = bounds(rim_);
        line({{box.low.x, level}, {box.high.x, level}}, false, palette::ink, 2);
    }

    void tree(const TreeShape& tree) {
        const Polygon trunk = outline_px(through_, tree.trunk);
        fill(trunk, palette::trunk);
        line(trunk, true, palette::wood, 2);
        for (const BranchShape& branch : tree.branches)
            for (const Polygon& run : branch.runs) fill(outline_px(through_, run), palette::wood);
    }

    void piece(const SeenPiece& piece) {
        const Polygon outline = outline_px(through_, piece.outline_mm);
        const std::optional<TriangleKinds>& kinds = piece.report->measures.kinds;
        if (piece.report->state == PieceState::counts)
            fill(outline, kinds ? palette::fill_of(kinds->by_angles) : palette::no_kind);
        line(outline, true, palette::ink, palette::outline_px);
    }

    /// On a plate of paper, where enough of the piece is seen beside the bars; else the number in the
    /// plan must do.
    void number(const SeenPiece& piece, const Bars& bars) {
        const Box box = bounds(rim_);
        const Polygon inner = rectangle(0.5 * (box.low + box.high), 0.68 * (box.high - box.low));
        const Polygon seen = cut(outline_px(through_, piece.outline_mm), inner);
        if (seen.empty()) return;
        const double beyond = beside_px + off_bars_px;
        const bool past_both = dot(centroid(seen) - bars.from, bars.beside) > 0.5 * beside_px * scale_;
        std::vector<HalfPlane> planes = half_planes(seen);
        planes.push_back(past_both ? half_plane(bars.from + beyond * scale_ * bars.beside, bars.beside)
                                   : half_plane(bars.from - off_bars_px * scale_ * bars.beside, -bars.beside));

        const double size = palette::number_px * scale_;
        const std::string words = number_words(piece.report->number, piece.report->measures.kinds);
        const Vec2 extent{palette::digit_width * size * static_cast<double>(words.size()),
                          palette::capital_height * size};
        const Room room = roomiest(planes, 0.5 * extent);
        const Polygon place = rectangle(room.at, extent);
        const auto taken = [&](const Polygon& other) { return !cut(other, place).empty(); };
        if (room.to_spare < 0 || std::any_of(numbers_.begin(), numbers_.end(), taken)) return;
        numbers_.push_back(place);
        marks_.push_back(Fill{grown(place, 2 * scale_), palette::paper});
        marks_.push_back(Text{room.at, words, size, palette::ink, TextAlign::centre});
    }

private:
    void fill(const Polygon& outline, Colour colour) {
        Polygon seen = cut(outline, rim_);
        if (!seen.empty()) marks_.push_back(Fill{std::move(seen), colour});
    }
    void line(const std::vector<Vec2>& points, bool closed, Colour colour, double width) {
        for (const Segment& stretch : cut_line(points, closed, rim_))
            marks_.push_back(Stroke{{stretch.from, stretch.to}, colour, width * scale_});
    }

    std::vector<Mark>& marks_;
    const Camera& through_;
    const Polygon& rim_;
    double scale_;
    std::vector<Polygon> numbers_;
};

Vec2 slip_size(double scale) { return palette::small_text_px * scale * Vec2{13.4, 3.6}; }

/// What the bars mean, on a slip of paper below the lens.
void draw_slip(std::vector<Mark>& marks, Vec2 top_middle, Allowed allowed, double scale) {
    const double size = palette::small_text_px * scale;
    const Vec2 extent = slip_size(scale);
    const Polygon slip = rectangle(top_middle + Vec2{0, extent.y / 2}, extent);
    marks.push_back(Fill{slip, palette::paper});
    marks.push_back(Stroke{slip, palette::ink, palette::outline_px * scale, true});
    const double left = top_middle.x - extent.x / 2 + 0.7 * size;
    const auto row = [&](double share, Colour colour, const std::string& words) {
        const double y = top_middle.y + share * extent.y;
        draw_bar(marks, {left, y}, {left + 1.8 * size, y}, colour, 0.8 * scale);
        marks.push_back(Text{{left + 2.5 * size, y}, words, size, palette::ink, TextAlign::left});
    };
    row(0.28, palette::finding, say("now"));
    row(0.72, palette::ink,
        allowed == Allowed::more_than_this ? say("needs more than this") : say("this much is fine"));
}

}  // namespace

std::vector<Mark> lens(const Scene& scene, const Plan& plan, const Report& report, const Finding& finding,
                       const Camera& camera, double scale) {
    std::vector<Mark> marks;
    if (finding.where_mm.empty()) return marks;
    const Vec2 middle_mm = 0.5 * (finding.where_mm.front() + finding.where_mm.back());
    const Vec2 target = to_px(camera, middle_mm);
    const double tolerance_mm = scene.challenge.tolerance_mm;
    const std::optional<Allowed> asks = allowed(finding);

    const std::vector<SeenPiece> pieces = hung_pieces(scene, plan, report, finding);
    const Vec2 slip_px = asks ? slip_size(scale) + Vec2{0, 2 * below_rim_px * scale} : Vec2{};
    const double radius = std::min(radius_px * scale, 0.5 * (camera.view.height - slip_px.y) - rim_px * scale);
    if (radius <= 0) return marks;
    const Vec2 centre = lens_centre(pieces, target, camera, radius, slip_px);
    const double shown_mm =
        std::max({distance(finding.where_mm.front(), finding.where_mm.back()), tolerance_mm, least_shown_mm});
    const double whole_pieces = 2 * camera.px_per_mm;  // where there is no gap to look into
    const double enlarged = asks ? std::max(shown_share * radius / shown_mm, whole_pieces) : whole_pieces;
    const Camera through{.centre_mm = middle_mm,
                         .px_per_mm = enlarged,
                         .view = {centre.x - radius, centre.y - radius, 2 * radius, 2 * radius}};

    // A line from the place that is looked at, the handle, the glass.
    const Vec2 away = unit(centre - target);
    const bool room_right = centre.x + radius + handle_length_px * scale < camera.view.x + camera.view.width;
    const Vec2 handle = unit(Vec2{away.x >= 0 && room_right ? 1.0 : -1.0, -0.75});
    marks.push_back(Stroke{{target, centre - radius * away}, palette::ink, palette::outline_px * scale});
    marks.push_back(Stroke{
        {centre + radius * handle, centre + (radius + handle_length_px * scale) * handle}, palette::ink, 12 * scale});
    const Polygon rim = circle(centre, radius);
    marks.push_back(Fill{rim, palette::paper});

    Looking looking(marks, through, rim, scale);
    looking.ground();
    looking.tree(shape_of(plan.tree, tolerance_mm));
    for (const SeenPiece& piece : pieces) looking.piece(piece);

    const Bars b = bars(finding, through, asks);
    for (const SeenPiece& piece : pieces) looking.number(piece, b);
    draw_bar(marks, b.from, b.to, palette::finding, scale);
    if (asks) {
        const Vec2 start = b.from + beside_px * scale * b.beside;
        draw_bar(marks, start, start + tolerance_mm * through.px_per_mm * b.way, palette::ink, scale);
    }
    marks.push_back(Stroke{rim, palette::ink, rim_px * scale, true});
    if (asks) draw_slip(marks, centre + Vec2{0, radius + below_rim_px * scale}, *asks, scale);
    return marks;
}

}  // namespace boughwork
