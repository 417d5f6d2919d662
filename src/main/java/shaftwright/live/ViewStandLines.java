package shaftwright.live;

import static shaftwright.contract.Grid.VIEW_STAND;
import static shaftwright.contract.Grid.VIEW_WAY;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.RADIAN;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.contract.ViewPart;
import shaftwright.reading.SideDrawing;
import shaftwright.reading.Sizing;

/** Where the hub of a side's drawing stands at droop, ride and bump, steered straight ahead. */
enum ViewStandLines implements LiveLine.Formula, LiveLine.Core {
    TRAVEL("view_travel", "Travel", MILLIMETRE, ""),
    NORM(
            "view_norm",
            "Travel, normalised",
            NUMBER,
            "(2*{view_travel}-({path_high}+{path_low}))/({path_high}-{path_low})"),
    CAMBER("view_camber", "Camber", RADIAN, PathLines.horner("view_coef_camber", "{view_norm}")),
    TOE("view_toe", "Toe", RADIAN, PathLines.horner("view_coef_toe", "{view_norm}")),
    PITCH(
            "view_pitch",
            "Pitch of the hub",
            RADIAN,
            "IF({view_linked}=1,"
                    + PathLines.horner("view_coef_pitch", "{view_linkage_norm}")
                    + ",0)"),
    HUB_AHEAD("view_hub_ahead", "Outer datum ahead", MILLIMETRE, ahead("{view_norm}")),
    HUB_OUT("view_hub_out", "Outer datum outward", MILLIMETRE, out("{view_norm}")),
    HUB_UP("view_hub_up", "Outer datum up", MILLIMETRE, up("{view_travel}")),
    OUT_X("view_out_x", "Stub axis forward", NUMBER, "SIN({view_toe})*COS({view_camber})"),
    OUT_Y("view_out_y", "Stub axis outward", NUMBER, "COS({view_toe})*COS({view_camber})"),
    OUT_Z("view_out_z", "Stub axis up", NUMBER, "0-SIN({view_camber})"),
    AHEAD_X("view_ahead_x", "Level ahead, forward", NUMBER, "COS({view_toe})"),
    AHEAD_Y("view_ahead_y", "Level ahead, outward", NUMBER, "0-SIN({view_toe})"),
    UP_X("view_up_x", "Square to both, forward", NUMBER, "SIN({view_camber})*SIN({view_toe})"),
    UP_Y("view_up_y", "Square to both, outward", NUMBER, "SIN({view_camber})*COS({view_toe})"),
    UP_Z("view_up_z", "Square to both, up", NUMBER, "COS({view_camber})");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    ViewStandLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (ViewStandLines line : values()) {
            if (line == PITCH) {
                LinkageNorm norm = new LinkageNorm();
                lines.add(
                        new LiveLine(
                                "view_linkage_norm",
                                Section.VIEW_WORK,
                                VIEW_STAND,
                                "Travel, normalised to the linkage's",
                                NUMBER,
                                norm,
                                norm));
                WayTravel travel = new WayTravel(false);
                lines.add(travel.line("view_way_travel", "Travel", MILLIMETRE));
                WayTravel way = new WayTravel(true);
                lines.add(way.line("view_way_norm", "Travel, normalised", NUMBER));
            }
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.VIEW_WORK,
                            VIEW_STAND,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    /** The outer datum ahead of the mark at a normalised travel. */
    static String ahead(String norm) {
        return "SUM({inner_ahead_used})+" + PathLines.horner("view_coef_fore_aft", norm);
    }

    /** The same from the vehicle's centre plane. */
    static String out(String norm) {
        return "SUM({inner_offset_used})+SQRT(MAX(0,"
                + PathLines.horner("view_coef_reach_squared", norm)
                + "))+{view_shift_hub}";
    }

    /** Its height at a travel. */
    static String up(String travel) {
        return "SUM({inner_height_used})+{ride_rise}+" + travel;
    }

    @Override
    public String at(Index index) {
        return "IF({path_ready}=1," + (this == TRAVEL ? travel(index.row()) : formula) + ",NA())";
    }

    private static String travel(int stand) {
        if (stand == ViewPart.RIDE) {
            return "0";
        }
        return stand < ViewPart.RIDE
                ? "MAX({path_low}," + ViewFrameLines.chosen("t_low", "{path_low}") + ")"
                : "MIN({path_high}," + ViewFrameLines.chosen("t_high", "{path_high}") + ")";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideDrawing drawing = sizing.drawingOrNull(index.side());
        return drawing == null ? CellValue.NOT_AVAILABLE : CellValue.of(core(drawing, index.row()));
    }

    private double core(SideDrawing drawing, int stand) {
        return switch (this) {
            case TRAVEL -> drawing.travel(stand);
            case NORM -> drawing.norm(stand);
            case CAMBER -> drawing.camber(stand);
            case TOE -> drawing.toe(stand);
            case PITCH -> drawing.pitch(stand);
            case HUB_AHEAD -> drawing.datum(stand).x();
            case HUB_OUT -> drawing.datum(stand).y();
            case HUB_UP -> drawing.datum(stand).z();
            case OUT_X -> drawing.axes(stand).out().x();
            case OUT_Y -> drawing.axes(stand).out().y();
            case OUT_Z -> drawing.axes(stand).out().z();
            case AHEAD_X -> drawing.axes(stand).ahead().x();
            case AHEAD_Y -> drawing.axes(stand).ahead().y();
            case UP_X -> drawing.axes(stand).up().x();
            case UP_Y -> drawing.axes(stand).up().y();
            case UP_Z -> drawing.axes(stand).up().z();
        };
    }

    /** Even steps of travel from droop to bump. */
    private record WayTravel(boolean normalised) implements LiveLine.Formula, LiveLine.Core {
        LiveLine line(String name, String label, Quantity quantity) {
            return new LiveLine(name, Section.VIEW_WORK, VIEW_WAY, label, quantity, this, this);
        }

        @Override
        public String at(Index index) {
            return "IF({path_ready}=1,"
                    + (normalised
                            ? "(2*{view_way_travel}-({path_high}+{path_low}))"
                                    + "/({path_high}-{path_low})"
                            : "{view_travel#0}+({view_travel#2}-{view_travel#0})*({:ordinal}-1)/"
                                    + (VIEW_WAY.rows() - 1))
                    + ",NA())";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            SideDrawing drawing = sizing.drawingOrNull(index.side());
            if (drawing == null) {
                return CellValue.NOT_AVAILABLE;
            }
            return CellValue.of(
                    normalised ? drawing.wayNorm(index.row()) : drawing.wayTravel(index.row()));
        }
    }

    /** The travel, as the linkage's curves count it, not beyond their ends. */
    private static final class LinkageNorm implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return "IF({path_ready}=1,IF({view_linked}=1,MAX(-1,MIN(1,(2*{view_travel}-"
                    + "({linkage_high}+{linkage_low}))/({linkage_high}-{linkage_low}))),0),NA())";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            SideDrawing drawing = sizing.drawingOrNull(index.side());
            return drawing == null
                    ? CellValue.NOT_AVAILABLE
                    : CellValue.of(drawing.linkageNorm(index.row()));
        }
    }
}
