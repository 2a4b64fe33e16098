// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/figures.h"
#include "order/what_if.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace miterbook {

/// The questions that may be asked of an order: kerf, lengths the yard has today, one other price,
/// and so many feet less.
class WhatIfForm : public QWidget {
    Q_OBJECT
public:
    explicit WhatIfForm(QWidget* parent = nullptr);

    /// Offers the lengths and sticks of the profiles of a job; what has been entered stays as far
    /// as it can.
    void offer(const JobFigures& figures, const PriceBook& prices);
    /// What has been entered. Errors: one sentence with the field.
    Result<WhatIf> whatIf() const;
    void clear();

Q_SIGNALS:
    void edited();

private:
    struct Choice {
        Id<Profile> profile;
        Length length;

        bool operator==(const Choice&) const = default;
    };

    void build();
    QLineEdit* addLine(const QString& name, const QString& hint);
    void sayUnits(const Shop& shop);
    void offerLengths(const std::vector<Length>& lengths, const Shop& shop);
    void offerSticks(const std::vector<Choice>& sticks, const PriceBook& prices);
    Result<void> readOffer(WhatIf& whatIf) const;

    QLineEdit* m_kerf;
    QWidget* m_lengthBox;
    QHBoxLayout* m_lengthRow;
    std::vector<std::pair<Length, QCheckBox*>> m_lengths;
    QComboBox* m_stick;
    std::vector<Choice> m_sticks;
    QLineEdit* m_price;
    QLineEdit* m_less;
    QLabel* m_lessLabel;
    LengthUnit m_written = LengthUnit::inches;
};

} // namespace miterbook
