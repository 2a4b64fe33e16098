// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace miterbook {

class Desk;

/// How the crew is paid: overtime, who works by the piece, and what a piece brings.
class PaySettings final : public QWidget {
    Q_OBJECT
public:
    explicit PaySettings(Desk& desk, QWidget* parent = nullptr);
};

} // namespace miterbook
