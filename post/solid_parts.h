// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/picture_pages.h"

namespace splicewright
{

// Parts of the pages of the solid model.

constexpr double page_left = 50, page_right = sheet_width - 50;

// Around the shaft's axis, rad.
Eigen::Matrix3d turned_by(double around);

// What lies in the window, by z alone.
Piece within(const Window& window);
Piece joined(Piece one, const Piece& other);

// What of the shaft the window of the splice leaves, with flat ends where it is cut.
ShadedSurface shown_stretch(const PictureContent& content, const std::vector<Piece>& pieces);

// Bar of colours and what is told beside it.
void add_foot(Sheet& sheet, const PictureContent& content);

}  // namespace splicewright
