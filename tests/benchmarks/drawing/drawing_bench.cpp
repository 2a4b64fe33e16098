// SPDX-License-Identifier: GPL-3.0-or-later
// How long the drawing of a level takes: 300 rooms and 300 openings on a screen of 1600 x 1000. At
// 60 frames a second a frame has 16.7 ms.
#include "stages/plan/drawing/picture_painter.h"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <benchmark/benchmark.h>

namespace {

using namespace miterbook;

/// 15 x 20 rooms of 12 x 10 ft, each with a window or a door.
Book bigLevel() {
    Book book;
    SheetRows& sheet = book.sheets[Id<Plan>(1)];
    Level level;
    level.id = Id<Level>(1);
    level.plan = Id<Plan>(1);
    sheet.of<Level>().put(level);
    constexpr int columns = 20;
    for (int i = 0; i < 300; ++i) {
        Room room;
        room.id = Id<Room>(i + 1);
        room.plan = Id<Plan>(1);
        room.level = level.id;
        room.position = i;
        room.name = "Room " + std::to_string(101 + i);
        const Length x = (Length::feet(12) + Length::sixteenths(72)) * (i % columns);
        const Length y = (Length::feet(10) + Length::sixteenths(72)) * (i / columns);
        const PlanPoint far{x + Length::feet(12), y + Length::feet(10)};
        if (!setOutline(room, {{x, y}, {far.x, y}, far, {x, far.y}}))
            std::abort();
        sheet.of<Room>().put(room);
        Opening opening;
        opening.id = Id<Opening>(i + 1);
        opening.plan = Id<Plan>(1);
        opening.room = room.id;
        opening.level = level.id;
        opening.kind = i % 2 == 0 ? OpeningKind::window : OpeningKind::prehungDoor;
        opening.mark = (i % 2 == 0 ? "W" : "D") + std::to_string(i);
        opening.width = Length::inches(32);
        opening.height = Length::inches(60);
        opening.wall = 1 + i % 4;
        opening.along = Length::feet(4);
        sheet.of<Opening>().put(opening);
    }
    return book;
}

void paintLevel(benchmark::State& state) {
    const Book book = bigLevel();
    const DrawnLevel level(book, {Id<Plan>(1), {}}, Id<Level>(1));
    const PlanPicture picture = pictureOf(level);
    QImage screen(1600, 1000, QImage::Format_RGB32);
    ViewFrame frame;
    frame.fit(picture.bounds(), screen.size());
    frame.zoom(static_cast<double>(state.range(0)) / 100.0, {800, 500});
    PictureLook look;
    look.selected.insert({DrawnItem::Kind::room, 7});
    LabelFonts fonts(QGuiApplication::font(), &screen);
    for (auto _ : state) {
        QPainter painter(&screen);
        painter.fillRect(screen.rect(), Qt::white);
        PicturePainter(painter, frame, QGuiApplication::palette(), screen.rect(), look, fonts)
            .paint(picture);
        frame.pan({1, 1});
    }
}
BENCHMARK(paintLevel)->Arg(100)->Arg(200)->Arg(400)->Unit(benchmark::kMillisecond);

void makePicture(benchmark::State& state) {
    const Book book = bigLevel();
    for (auto _ : state) {
        const DrawnLevel level(book, {Id<Plan>(1), {}}, Id<Level>(1));
        benchmark::DoNotOptimize(pictureOf(level));
    }
}
BENCHMARK(makePicture)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
