// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "book/profile.h"

#include <QPolygonF>
#include <QWidget>

#include <optional>

class QPainter;

namespace miterbook {

/// A profile seen from its end, to scale, with its thickness and width; crown at its spring angle
/// against wall and ceiling.
class SectionPicture final : public QWidget {
    Q_OBJECT
public:
    explicit SectionPicture(QWidget* parent = nullptr);

    /// Null: nothing to show.
    void show(const Profile* profile, LengthStyle style);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool springs() const { return m_profile->springAngle > Angle(); }
    QPolygonF outline() const;
    void paintFlat(QPainter& painter, const QRectF& room) const;
    void paintSprung(QPainter& painter, const QRectF& room) const;

    std::optional<Profile> m_profile;
    QString m_thickness;
    QString m_width;
};

} // namespace miterbook
