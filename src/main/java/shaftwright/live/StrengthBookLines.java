package shaftwright.live;

import java.util.function.ToDoubleFunction;
import shaftwright.build.Duty;
import shaftwright.contract.Grid;
import shaftwright.contract.InputKind;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.reading.StrengthReader;
import shaftwright.strength.TravelShares;
import shaftwright.tyre.Tyre;

/** What all scenarios' strength rests on: share of a shaft, least own figure, duty rows. */
final class StrengthBookLines {
    /** Turns a minute of a wheel of 1 mm diameter at 1 km/h, as it is multiplied and divided. */
    static final String WHEEL_SPEED = Tyre.MM_PER_KM + "/" + Tyre.MINUTES_PER_HOUR + "/";

    private StrengthBookLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> book = LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK);
        book.number("torque_nm", "Unit of torque, N·m")
                .is(
                        "IF(unit=\"inch\"," + InputKind.TORQUE.inchFactor() + ",1)",
                        sizing -> InputKind.TORQUE.factor(sizing.unit()));
        LineSet<StrengthReader> strength = book.of((sizing, index) -> sizing.strength());
        strength.number("torque_share", "Part of the torque that one shaft may get")
                .is(
                        """
                        IF(differential="locked",1,IF(differential="limited slip",
                        IF(ISNUMBER(torque_bias_read),torque_bias_read/(1+torque_bias_read),0.5),0.5))
                        """,
                        reader -> reader.differential().share());
        strength.whole("own_row", "Row of the least own figure")
                .is(
                        """
                        IF(COUNT(rating_torque_read)=0,0,
                        MATCH(MIN(rating_torque_read),rating_torque_read,0))
                        """,
                        StrengthReader::leastOwn);
        LineSet<TravelShares> shares = strength.since(6).ofAny((reader, index) -> reader.shares());
        share(shares, "bump", 0, TravelShares::bump);
        share(shares, "ride", 1, TravelShares::ride);
        share(shares, "droop", 0, TravelShares::droop);
        LineSet<Duty> duties =
                strength.in(Section.PARTS_WORK, Grid.DUTY_SLOT)
                        .ofAny((reader, index) -> reader.duty(index.row()), Lacking.ZERO);
        duty(duties, "duty_part", "Share", "{duty_share_read}*1", Duty::share);
        duty(
                duties,
                "duty_weight",
                "Share by torque cubed",
                "{duty_share_read}*{duty_torque_read}^3",
                duty -> duty.share() * Math.pow(duty.torque(), 3));
        duty(
                duties,
                "duty_way",
                "Turns per minute by tyre diameter, mm",
                "{duty_speed_read}*" + WHEEL_SPEED + Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER,
                duty -> new Tyre(1).wheelSpeed(duty.speed()));
    }

    /** A share of a joint's time; empty while those typed don't add up. */
    private static void share(
            LineSet<TravelShares> shares,
            String place,
            int untyped,
            ToDoubleFunction<TravelShares> core) {
        shares.with(
                        Pieces.of("typed", "share_bump_read,share_ride_read,share_droop_read")
                                .and("this", "share_" + place + "_read")
                                .and("untyped", untyped)
                                .and("near", TravelShares.NEAR))
                .number("share_at_" + place, "Share of time that counts")
                .is(
                        """
                        IF(COUNT(<typed>)=0,<untyped>,
                        IF(ABS(SUM(<typed>)-100)<<near>,SUM(<this>)/100,""))
                        """,
                        core);
    }

    /** A figure of a duty, 0 in a row that lacks one. */
    private static void duty(
            LineSet<Duty> duties,
            String name,
            String label,
            String formula,
            ToDoubleFunction<Duty> core) {
        duties.number(name, label)
                .is(
                        "IF(COUNT({duty_share_read},{duty_torque_read},{duty_speed_read})=3,"
                                + (formula + ",0)"),
                        core);
    }
}
