// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "order/what_if.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace miterbook {

class Desk;
class FigureDesk;
class FigureView;
class WhatIfForm;
class WhatIfSearch;

/// "What if" of an order: questions above, the order as it is and as it would be below. Nothing in
/// the book changes.
class WhatIfPanel : public QWidget {
    Q_OBJECT
public:
    WhatIfPanel(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    QString sentence() const;
    bool busy() const;

private:
    void ask();
    void refresh();
    void show(const Result<std::vector<StickPlan>>& plans);
    void say(const QString& sentence);

    Desk& m_desk;
    FigureDesk& m_figures;
    WhatIfForm* m_form;
    QLabel* m_sentence;
    QPushButton* m_clear;
    FigureView* m_view;
    WhatIfSearch* m_search;
};

} // namespace miterbook
