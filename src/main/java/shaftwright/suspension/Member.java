package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;

/**
 * A part that ties the hub to the frame.
 *
 * @param name in the trade's words, unlike all others of its linkage
 * @param shape which points it has and what it leaves free
 */
public record Member(String name, Shape shape) {
    /** What the points of parts are called, part by part. */
    static List<String> pointNames(List<Member> members) {
        List<String> names = new ArrayList<>();
        for (Member member : members) {
            for (String end : member.shape().ends()) {
                names.add(member.name() + ", " + end);
            }
        }
        return List.copyOf(names);
    }

    /** What a part holds, by its joints. */
    public enum Shape {
        /** An arm fast to the hub that turns about an axis square to the car. */
        SQUARE_PIVOT(5, "pivot"),
        /** An arm fast to the hub that turns about the line through two bushes. */
        PIVOT_AXIS(5, "inner pivot", "outer pivot"),
        /** An arm fast to the hub that turns every way about one bush. */
        BALL_PIVOT(3, "pivot"),
        /** A wishbone with two bushes on the frame and a ball joint in the hub. */
        WISHBONE(2, "front pivot", "rear pivot", "ball joint"),
        /** A rod with a joint at each end. */
        LINK(1, "frame end", "hub end");

        private final int held;
        private final List<String> ends;

        Shape(int held, String... ends) {
            this.held = held;
            this.ends = List.of(ends);
        }

        /** How many of the hub's six freedoms it takes away. */
        public int held() {
            return held;
        }

        /** What its points are called, in the order in which they are given. */
        public List<String> ends() {
            return ends;
        }

        /** Whether its last point rides on the hub. */
        public boolean endsOnHub() {
            return this == WISHBONE || this == LINK;
        }
    }
}
