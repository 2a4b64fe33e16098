// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

namespace miterbook {

/// A form that may be higher than its place: it scrolls there, without a frame, on the ground it
/// lies on. The focus goes to the fields in it, not to itself.
inline QScrollArea* scrolled(QWidget* form) {
    auto* area = new QScrollArea;
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(form);
    form->setAutoFillBackground(false);
    area->viewport()->setAutoFillBackground(false);
    return area;
}

} // namespace miterbook
