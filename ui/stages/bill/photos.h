// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/attachment.h"

#include <QString>

class QWidget;

namespace miterbook {

class BillDesk;

/// A picture file as it is kept with an extra: turned upright, at most 1,600 pixels a side, JPEG.
/// Errors: not a picture.
Result<Attachment> photoFrom(const QString& path);

/// Asks for a picture and keeps it with the extra.
void choosePhoto(BillDesk& bill, const Extra& extra, QWidget* parent);
/// Shows the pictures of an extra; one can be taken away.
void showPhotosOf(BillDesk& bill, const Extra& extra, QWidget* parent);

} // namespace miterbook
