// SPDX-License-Identifier: MIT
#include "gui/picture/label_places.h"

#include "gui/picture/outline.h"
#include "tests/picture/marks_of.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

const PixelBox view{0, 0, 400, 300};
const Vec2 label_size{22, 14};

Box box(Vec2 at) { return bounds(rectangle(at, label_size)); }

/// A small triangle that hangs by its upper side, its middle there.
Polygon small_piece(Vec2 middle) { return {middle + Vec2{-10, -6}, middle + Vec2{10, -6}, middle + Vec2{0, 11}}; }

}  // namespace

TEST_CASE("A number stands below its piece when there is room, on a line that begins at the piece") {
    const Polygon piece = small_piece({200, 100});
    const LabelPlace place = LabelPlaces({piece}, {}, view).beside(0, label_size, 1);
    CHECK(place.at.y > bounds(piece).high.y);
    CHECK(std::abs(place.at.x - 200) < 3);
    CHECK_FALSE(overlap(box(place.at), bounds(piece)));
    REQUIRE(place.leader);
    CHECK(distance(place.leader->from, {200, 111}) < 1.5);  // the lower corner
    CHECK(length(*place.leader) > 2);
    CHECK(length(*place.leader) < 12);
}

TEST_CASE("A number gives way to what stands where it would like to be") {
    const Polygon piece = small_piece({200, 100});
    const Vec2 liked = LabelPlaces({piece}, {}, view).beside(0, label_size, 1).at;
    const Polygon in_the_way = rectangle(liked, {30, 20});

    LabelPlaces beside_label({piece}, {}, view);
    beside_label.occupy(liked, {30, 20});
    CHECK_FALSE(overlap(box(beside_label.beside(0, label_size, 1).at), bounds(in_the_way)));

    LabelPlaces beside_piece({piece, in_the_way}, {}, view);
    CHECK_FALSE(overlap(box(beside_piece.beside(0, label_size, 1).at), bounds(in_the_way)));

    LabelPlaces beside_branch({piece}, {in_the_way}, view);
    CHECK_FALSE(overlap(box(beside_branch.beside(0, label_size, 1).at), bounds(in_the_way)));
}

TEST_CASE("A number's line does not run across another piece") {
    // Below the piece lies a bar, and below the bar there would be room.
    const Polygon piece = small_piece({200, 100});
    const Polygon bar = rectangle({200, 116}, {60, 6});
    const LabelPlace place = LabelPlaces({piece, bar}, {}, view).beside(0, label_size, 1);
    REQUIRE(place.leader);
    CHECK(cut_line({place.leader->from, place.leader->to}, false, bar).empty());
    CHECK_FALSE(overlap(box(place.at), bounds(bar)));
}

TEST_CASE("Numbers placed one after the other keep off each other, and in the view") {
    std::vector<Polygon> pieces;
    for (int i = 0; i < 12; ++i) pieces.push_back(small_piece({40 + i * 22.0, 285}));  // along the lower edge
    LabelPlaces places(pieces, {}, view);
    std::vector<Vec2> at;
    for (std::size_t i = 0; i < pieces.size(); ++i) at.push_back(places.beside(i, label_size, 1).at);
    for (std::size_t i = 0; i < at.size(); ++i) {
        CHECK(lies_in(box(at[i]), view));
        for (std::size_t k = i + 1; k < at.size(); ++k) CHECK_FALSE(overlap(box(at[i]), box(at[k])));
    }
}

TEST_CASE("Where there is no room at all a number still stands somewhere near") {
    const Polygon piece = small_piece({200, 100});
    LabelPlaces places({piece, rectangle({200, 150}, {400, 300})}, {rectangle({200, 150}, {400, 300})}, view);
    places.occupy({200, 150}, {400, 300});
    CHECK(distance(places.beside(0, label_size, 1).at, {200, 100}) < 100);
}

TEST_CASE("A branch's name takes the first of its places that is free") {
    LabelPlaces places({rectangle({100, 100}, {40, 40})}, {}, view);
    const std::vector<Vec2> wanted{{100, 100}, {200, 100}, {300, 100}};
    CHECK(places.least_crowded(wanted, label_size) == Vec2{200, 100});
    CHECK(places.least_crowded(wanted, label_size) == Vec2{300, 100});
    CHECK(places.least_crowded(wanted, label_size) == Vec2{100, 100});  // over a piece rather than a name
}
