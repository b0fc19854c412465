package org.axlewright.api.sheet;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Item;
import org.axlewright.api.section.Occupant;
import org.axlewright.api.section.Position;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Tyres;
import org.axlewright.api.section.Tyres.Tyre;
import org.axlewright.api.sheet.Drawing.Anchor;
import org.axlewright.api.sheet.Drawing.Pen;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.LengthUnit;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.tyre.TyreSize;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * Side elevation from the left and, below it, the view from above (first-angle projection, ISO 5456-2), to one scale, with the dimensions,
 * axle loads and centres of gravity. x rearward from the front axle, y to the right, z up from the ground; the front is on the left.
 */
final class VehicleDrawing {

    /** Width of both views, mm: what a frame of 180 mm leaves inside. */
    static final double WIDTH = 172;

    /** Room beside the vehicle: for the height of the centre of gravity and the tracks. */
    private static final double LEFT = 13;

    private static final double RIGHT = 20;

    /** Most that the vehicle may take in the side elevation and in the view from above, mm. */
    private static final double SIDE_HEIGHT = 68;

    private static final double PLAN_HEIGHT = 52;

    private static final double ABOVE = 11;

    /** Under the ground: loads, dimension lines, scale. */
    private static final double BELOW = 37;

    /** Scales after ISO 5455 with steps between them. */
    private static final int[] METRIC_SCALES = {1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 300, 500};

    /** Inches to the foot: 6, 3, 1 1/2, 1, 3/4, 1/2, 3/8, 1/4, 3/16, 1/8, 1/16, 1/32. */
    private static final int[] US_SCALES = {1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 192, 384, 768};

    /** Wheel drawn, dashed, when nothing says its diameter or its width, m. */
    private static final double UNKNOWN_DIAMETER = 0.45;

    private static final double UNKNOWN_WIDTH = 0.2;

    /** Balloons that can be told apart on a sheet; beyond that the heaviest parts get theirs. */
    private static final int MOST_BALLOONS = 30;

    private final Setup setup;
    private final JsonNode balance;
    private final UnitSystem units;
    private final double wheelbase;
    private final double frontRise;
    private final double rearRise;
    private final List<Part> parts;
    private final Set<Integer> numbered;
    private final List<Point> underside = new ArrayList<>();
    private final Wheel front;
    private final Wheel rear;
    private final int scale;
    private final double leftEnd;
    private final double slack;

    private record Point(double x, double z) {}

    private record Wheel(double diameter, double width, boolean known) {}

    /** A part or a person; y is zero when it was left out. */
    private record Part(int number, double x, double y, double z, double mass, boolean person, boolean removed) {}

    private VehicleDrawing(Setup setup, double wheelbase, JsonNode balance, JsonNode lift, UnitSystem units) {
        this.setup = setup;
        this.balance = balance;
        this.units = units;
        this.wheelbase = wheelbase;
        this.frontRise = metres(lift.path("frontRise"), 0);
        this.rearRise = metres(lift.path("rearRise"), 0);
        this.parts = parts();
        this.numbered = parts.stream()
                .sorted(Comparator.comparingDouble(Part::mass).reversed().thenComparingInt(Part::number))
                .limit(MOST_BALLOONS)
                .map(Part::number)
                .collect(Collectors.toSet());
        Tyres tyres = setup.tyres();
        this.front = wheel(tyres == null ? null : tyres.front());
        this.rear = wheel(tyres == null ? null : tyres.rear());
        underside();
        this.leftEnd = Math.min(-front.diameter / 2, extent().min().orElse(0));
        double rightEnd = Math.max(wheelbase + rear.diameter / 2, extent().max().orElse(0));
        this.scale = scale(rightEnd - leftEnd);
        this.slack = (WIDTH - LEFT - RIGHT - paper(rightEnd - leftEnd)) / 2;
    }

    /** The vehicle, or null without a wheelbase. */
    static @Nullable VehicleDrawing of(Setup setup, JsonNode balance, JsonNode lift, UnitSystem units) {
        Chassis chassis = setup.chassis();
        Length wheelbase = chassis == null ? null : chassis.wheelbase();
        return wheelbase == null ? null : new VehicleDrawing(setup, wheelbase.si(), balance, lift, units);
    }

    /** The denominator: 20 for 1:20. */
    int scale() {
        return scale;
    }

    /** Whether points of the setup are drawn raised by lift and tyres. */
    boolean raised() {
        return frontRise != 0 || rearRise != 0;
    }

    /** Whether every part has its number on the drawing. */
    boolean allNumbered() {
        return parts.size() <= MOST_BALLOONS;
    }

    /** Parts that lack a place, and so are not drawn. */
    int notDrawn() {
        int sent = (setup.items() == null ? 0 : setup.items().size())
                + (setup.occupants() == null ? 0 : setup.occupants().size());
        return sent - parts.size();
    }

    /** Items are numbered in the order sent, occupants go on from there, as in the tables. */
    private List<Part> parts() {
        List<Part> found = new ArrayList<>();
        int number = 0;
        for (Item item : Objects.requireNonNullElse(setup.items(), List.<Item>of())) {
            number++;
            double mass = item.mass() == null ? 0 : item.mass().si();
            add(found, number, item.position(), mass, false, Boolean.TRUE.equals(item.removed()));
        }
        for (Occupant occupant : Objects.requireNonNullElse(setup.occupants(), List.<Occupant>of())) {
            number++;
            double mass = occupant.mass() == null ? 0 : occupant.mass().si();
            add(found, number, occupant.position(), mass, true, false);
        }
        return found;
    }

    private void add(
            List<Part> found, int number, @Nullable Position at, double mass, boolean person, boolean removed) {
        if (at != null && at.x() != null && at.z() != null) {
            double x = at.x().si();
            double y = at.y() == null ? 0 : at.y().si();
            found.add(new Part(number, x, y, at.z().si() + rise(x), mass, person, removed));
        }
    }

    /** Points of a setup hold for the vehicle as found; the lift raises them, axle by axle. */
    private double rise(double x) {
        return frontRise + (rearRise - frontRise) * x / wheelbase;
    }

    private static Wheel wheel(@Nullable Tyre tyre) {
        if (tyre == null) {
            return new Wheel(UNKNOWN_DIAMETER, UNKNOWN_WIDTH, false);
        }
        TyreSize size = tyre.size() == null ? null : TyreSize.parse(tyre.size());
        double width = size == null ? UNKNOWN_WIDTH : size.sectionWidthM();
        if (tyre.diameter() != null) {
            return new Wheel(tyre.diameter().si(), width, true);
        }
        return size == null ? new Wheel(UNKNOWN_DIAMETER, width, false) : new Wheel(size.diameterM(), width, true);
    }

    private void underside() {
        Chassis chassis = Objects.requireNonNull(setup.chassis());
        Chassis.Overhang ahead = chassis.frontOverhang();
        Chassis.Overhang behind = chassis.rearOverhang();
        if (ahead != null && ahead.reach() != null && ahead.height() != null) {
            touch(-ahead.reach().si(), ahead.height().si());
        }
        if (chassis.groundClearance() != null) {
            touch(0.3 * wheelbase, chassis.groundClearance().si());
            touch(0.7 * wheelbase, chassis.groundClearance().si());
        }
        if (behind != null && behind.reach() != null && behind.height() != null) {
            touch(wheelbase + behind.reach().si(), behind.height().si());
        }
    }

    private void touch(double x, double z) {
        underside.add(new Point(x, z + rise(x)));
    }

    private DoubleStream extent() {
        return DoubleStream.concat(
                DoubleStream.concat(
                        parts.stream().mapToDouble(Part::x), underside.stream().mapToDouble(Point::x)),
                DoubleStream.of(metres(balance.at("/position/x"), 0), metres(balance.at("/empty/position/x"), 0)));
    }

    private double top() {
        return DoubleStream.concat(
                        DoubleStream.concat(
                                parts.stream().mapToDouble(Part::z),
                                underside.stream().mapToDouble(Point::z)),
                        DoubleStream.of(
                                front.diameter,
                                rear.diameter,
                                metres(balance.at("/position/z"), 0),
                                metres(balance.at("/empty/position/z"), 0)))
                .max()
                .orElse(0);
    }

    /** Half the width of what the view from above shows. */
    private double halfWidth() {
        return DoubleStream.concat(
                        parts.stream().mapToDouble(part -> Math.abs(part.y)),
                        DoubleStream.of(
                                halfTrack(true) + front.width / 2,
                                halfTrack(false) + rear.width / 2,
                                Math.abs(metres(balance.at("/position/y"), 0))))
                .max()
                .orElse(0);
    }

    private double halfTrack(boolean atFront) {
        Chassis chassis = Objects.requireNonNull(setup.chassis());
        Length track = atFront ? chassis.frontTrack() : chassis.rearTrack();
        return track == null || isSingle(atFront) ? 0 : track.si() / 2;
    }

    /** Whether the axle has one wheel, on the centre plane. */
    private boolean isSingle(boolean atFront) {
        WheelPlan plan = Objects.requireNonNull(setup.chassis()).wheelPlan();
        return plan == (atFront ? WheelPlan.ONE_IN_FRONT : WheelPlan.ONE_BEHIND);
    }

    private int scale(double length) {
        int[] scales = units == UnitSystem.US ? US_SCALES : METRIC_SCALES;
        for (int one : scales) {
            if (length * 1000 / one <= WIDTH - LEFT - RIGHT
                    && top() * 1000 / one <= SIDE_HEIGHT
                    && 2 * halfWidth() * 1000 / one <= PLAN_HEIGHT) {
                return one;
            }
        }
        return scales[scales.length - 1];
    }

    private double paper(double metres) {
        return metres * 1000 / scale;
    }

    private double px(double x) {
        return LEFT + slack + paper(x - leftEnd);
    }

    private static double metres(JsonNode length, double otherwise) {
        if (!Wording.isQuantity(length)) {
            return otherwise;
        }
        String token = length.path("unit").asString();
        for (LengthUnit unit : LengthUnit.values()) {
            if (unit.toString().equals(token)) {
                return unit.toSi(length.path("value").asDouble());
            }
        }
        return otherwise;
    }

    /** A dimension without its unit, which the title block tells once (ISO 129-1): millimetres, or inches to a tenth. */
    private String dimension(double metres) {
        BigDecimal value = units == UnitSystem.US
                ? BigDecimal.valueOf(LengthUnit.INCH.fromSi(metres)).setScale(1, RoundingMode.HALF_EVEN)
                : BigDecimal.valueOf(LengthUnit.MILLIMETRE.fromSi(metres)).setScale(0, RoundingMode.HALF_EVEN);
        return value.toPlainString().replace('-', '−');
    }

    /** Side elevation, and the view from above where a track is known. */
    List<Drawing> views() {
        return halfTrack(true) == 0 && halfTrack(false) == 0 ? List.of(side()) : List.of(side(), plan());
    }

    private Drawing side() {
        DrawingBoard board = new DrawingBoard();
        double ground = ABOVE + paper(top()) + 4;
        double height = ground + BELOW;
        ground(board, ground);
        if (underside.size() > 1) {
            Path2D line = new Path2D.Double();
            line.moveTo(px(underside.get(0).x), ground - paper(underside.get(0).z));
            underside.forEach(point -> line.lineTo(px(point.x), ground - paper(point.z)));
            board.draw(Pen.OUTLINE, line);
        }
        sideWheel(board, 0, front, ground);
        sideWheel(board, wheelbase, rear, ground);
        for (Part part : parts) {
            mark(board, part, px(part.x), ground - paper(part.z));
        }
        centres(board, ground);
        for (Part part : parts) {
            if (numbered.contains(part.number)) {
                board.balloon(
                        px(part.x),
                        ground - paper(part.z),
                        1.6,
                        String.valueOf(part.number),
                        WIDTH - RIGHT,
                        ground - 1);
            }
        }
        load(board, 0, "frontAxle", ground);
        load(board, wheelbase, "rearAxle", ground);
        sideDimensions(board, ground);
        scaleBar(board, height - 3);
        board.line(Pen.NARROW, 12, 3, 3, 3);
        board.head(3, 3, -1, 0);
        board.write(13.5, 3.9, "front", Anchor.START);
        return board.drawing(WIDTH, height, "Side elevation from the left, scale 1:" + scale);
    }

    private void ground(DrawingBoard board, double ground) {
        board.line(Pen.OUTLINE, 4, ground, WIDTH - RIGHT + 4, ground);
        for (double x = 7; x < WIDTH - RIGHT + 4; x += 4) {
            board.line(Pen.NARROW, x, ground, x - 1.8, ground + 1.8);
        }
    }

    private void sideWheel(DrawingBoard board, double x, Wheel wheel, double ground) {
        double radius = paper(wheel.diameter / 2);
        double middle = ground - radius;
        board.circle(wheel.known ? Pen.OUTLINE : Pen.OUTLINE_DASHED, px(x), middle, radius);
        board.line(Pen.CENTRE, px(x) - radius - 2, middle, px(x) + radius + 2, middle);
        board.line(Pen.CENTRE, px(x), middle - radius - 2, px(x), middle + radius);
        if (wheel.known) {
            double corner = radius * Math.sqrt(0.5);
            board.line(Pen.NARROW, px(x) - corner, middle - corner, px(x) + corner, middle + corner);
            board.head(px(x) - corner, middle - corner, -Math.sqrt(0.5), -Math.sqrt(0.5));
            board.head(px(x) + corner, middle + corner, Math.sqrt(0.5), Math.sqrt(0.5));
            String across = "⌀" + dimension(wheel.diameter);
            board.write(px(x) - 0.8 - DrawingBoard.width(across), middle + 3, across, Anchor.START);
        }
        board.take(px(x), middle, 3);
    }

    private void mark(DrawingBoard board, Part part, double x, double y) {
        Pen pen = part.removed ? Pen.NARROW_DASHED : Pen.NARROW;
        if (part.person) {
            board.circle(pen, x, y, 1.4);
        } else {
            board.square(pen, x, y, 1.3);
        }
        board.line(Pen.NARROW, x - 0.6, y, x + 0.6, y);
        board.line(Pen.NARROW, x, y - 0.6, x, y + 0.6);
        board.take(x, y, 1.8);
    }

    /** As driven large, nobody aboard small; a height that is not known leaves a centre line. */
    private void centres(DrawingBoard board, double ground) {
        JsonNode empty = balance.path("empty").path("position");
        if (Wording.isQuantity(empty.get("x")) && Wording.isQuantity(empty.get("z"))) {
            board.centreOfGravity(px(metres(empty.path("x"), 0)), ground - paper(metres(empty.path("z"), 0)), 1.4);
        }
        JsonNode driven = balance.path("position");
        if (!Wording.isQuantity(driven.get("x"))) {
            return;
        }
        double x = px(metres(driven.path("x"), 0));
        if (Wording.isQuantity(driven.get("z"))) {
            board.centreOfGravity(x, ground - paper(metres(driven.path("z"), 0)), 2.3);
        } else {
            board.line(Pen.CENTRE, x, ABOVE, x, ground);
        }
    }

    /** What the ground carries, pointing at the tyre. */
    private void load(DrawingBoard board, double x, String axle, double ground) {
        JsonNode load = balance.path(axle).path("load");
        if (!Wording.isQuantity(load)) {
            return;
        }
        double share = balance.path(axle).path("share").asDouble();
        boolean lifted = load.path("value").asDouble() < 0;
        double tail = ground + 4 + 6 * Math.min(1, Math.max(0.3, Math.abs(share)));
        board.line(Pen.LOAD, px(x), tail, px(x), ground + 2.5);
        board.head(px(x), lifted ? tail : ground + 0.4, 0, lifted ? 1 : -1);
        board.writeOver(
                px(x) + 1.8,
                ground + 5.5,
                Wording.shown(load, "load") + " (" + Wording.number(share * 100, true) + " %)");
    }

    private void sideDimensions(DrawingBoard board, double ground) {
        double near = ground + 17;
        double far = ground + 25;
        Chassis chassis = Objects.requireNonNull(setup.chassis());
        JsonNode at = balance.path("position");
        double below = ground + 11;
        board.across(px(0), below, px(wheelbase), below, far, dimension(wheelbase));
        if (Wording.isQuantity(at.get("x"))) {
            double x = metres(at.path("x"), 0);
            double z = metres(at.path("z"), 0);
            board.across(px(0), below, px(x), ground - paper(z) + (z == 0 ? 0 : 2.3), near, dimension(Math.abs(x)));
            if (Wording.isQuantity(at.get("z"))) {
                board.upright(ground - paper(z), px(x) + 2.3, ground, WIDTH - RIGHT + 4, WIDTH - 4, dimension(z));
            }
        }
        overhang(board, chassis.frontOverhang(), 0, -1, near, ground);
        overhang(board, chassis.rearOverhang(), wheelbase, 1, near, ground);
        Length clearance = chassis.groundClearance();
        if (clearance != null) {
            double x = 0.5 * wheelbase;
            double z = clearance.si() + rise(x);
            double top = ground - paper(z);
            board.upright(top, px(x), ground, px(x), px(x), dimension(z));
        }
    }

    private void overhang(
            DrawingBoard board, Chassis.@Nullable Overhang overhang, double axle, int sense, double y, double ground) {
        if (overhang == null || overhang.reach() == null || overhang.height() == null) {
            return;
        }
        double end = axle + sense * overhang.reach().si();
        double z = overhang.height().si() + rise(end);
        board.across(
                px(axle),
                ground + 11,
                px(end),
                ground - paper(z),
                y,
                dimension(overhang.reach().si()));
    }

    private void scaleBar(DrawingBoard board, double y) {
        double metres = units == UnitSystem.US ? LengthUnit.INCH.toSi(12) : 0.5;
        while (paper(metres) < 8) {
            metres *= 2;
        }
        double end = 4 + paper(metres);
        board.line(Pen.OUTLINE, 4, y, end, y);
        board.line(Pen.OUTLINE, 4, y - 1, 4, y + 1);
        board.line(Pen.OUTLINE, end, y - 1, end, y + 1);
        board.write(end + 1.5, y + 0.9, dimension(metres) + (units == UnitSystem.US ? " in" : " mm"), Anchor.START);
    }

    private Drawing plan() {
        DrawingBoard board = new DrawingBoard();
        double half = paper(halfWidth());
        double middle = half + 5;
        double height = 2 * half + 10;
        board.line(Pen.CENTRE, px(leftEnd) - 3, middle, WIDTH - RIGHT + 3, middle);
        planWheels(board, 0, front, halfTrack(true), middle);
        planWheels(board, wheelbase, rear, halfTrack(false), middle);
        for (Part part : parts) {
            mark(board, part, px(part.x), middle - paper(part.y));
        }
        JsonNode at = balance.path("position");
        if (Wording.isQuantity(at.get("x"))) {
            board.centreOfGravity(px(metres(at.path("x"), 0)), middle - paper(metres(at.path("y"), 0)), 2.3);
        }
        for (Part part : parts) {
            if (numbered.contains(part.number)) {
                board.balloon(
                        px(part.x), middle - paper(part.y), 1.6, String.valueOf(part.number), WIDTH - RIGHT, height);
            }
        }
        return board.drawing(WIDTH, height, "View from above, scale 1:" + scale);
    }

    private void planWheels(DrawingBoard board, double x, Wheel wheel, double halfTrack, double middle) {
        boolean single = isSingle(x == 0);
        if (halfTrack == 0 && !single) {
            return;
        }
        double length = paper(wheel.diameter);
        double width = paper(wheel.width);
        for (int side : single ? new int[] {0} : new int[] {-1, 1}) {
            double y = middle + side * paper(halfTrack);
            board.draw(
                    wheel.known ? Pen.OUTLINE : Pen.OUTLINE_DASHED,
                    new Rectangle2D.Double(px(x) - length / 2, y - width / 2, length, width));
            board.line(Pen.CENTRE, px(x) - length / 2 - 2, y, px(x) + length / 2 + 2, y);
            board.take(px(x), y, width / 2);
        }
        if (single) {
            return;
        }
        board.line(Pen.CENTRE, px(x), middle - paper(halfTrack), px(x), middle + paper(halfTrack));
        double at = x == 0 ? 6 : WIDTH - 4;
        double from = px(x) + (x == 0 ? -1 : 1) * (length / 2 + 2);
        board.upright(middle - paper(halfTrack), from, middle + paper(halfTrack), from, at, dimension(2 * halfTrack));
    }
}
