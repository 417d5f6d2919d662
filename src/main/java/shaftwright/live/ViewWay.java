package shaftwright.live;

import java.util.Locale;
import shaftwright.study.SideDrawing.Way;
import shaftwright.suspension.Vector;

/** Which way a figure of a side's drawing runs, as names and labels of its lines write it. */
enum ViewWay {
    AHEAD(Way.AHEAD, "x", "forward", "ahead", "Rearmost", "Foremost"),
    OUT(Way.OUT, "y", "outward", "outward", "Innermost", "Outermost"),
    UP(Way.UP, "z", "up", "up", "Lowest", "Highest");

    final Way way;

    /** In names, of a direction's part. */
    final String letter;

    /** In labels, of a direction's part. */
    final String direction;

    /** In labels, of a point's place. */
    final String place;

    final String least;
    final String most;

    ViewWay(Way way, String letter, String direction, String place, String least, String most) {
        this.way = way;
        this.letter = letter;
        this.direction = direction;
        this.place = place;
        this.least = least;
        this.most = most;
    }

    /** In names, of a point's place. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    double of(Vector point) {
        return way.of(point);
    }
}
