// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/risk.h"
#include "job/figures.h"

#include <QWidget>

#include <optional>

class QLabel;

namespace miterbook {

class Desk;
class FigureView;
class RiskCurve;

/// The chance that a bid makes money, from the shop's own finished houses.
class RiskPanel final : public QWidget {
    Q_OBJECT
public:
    explicit RiskPanel(Desk& desk, QWidget* parent = nullptr);

    void showFigures(const JobFigures& figures);

private:
    const RiskBelief& belief();

    Desk& m_desk;
    std::optional<RiskBelief> m_belief; ///< nothing: the finished houses have changed
    QLabel* m_words;
    RiskCurve* m_curve;
    FigureView* m_certainties;
    FigureView* m_works;
};

} // namespace miterbook
