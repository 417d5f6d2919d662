package shaftwright.study;

import java.util.List;
import shaftwright.suspension.Member;

/** How the parts of a linkage are drawn in one line, from the outer datum along each and back. */
public record LinkageOutline(List<Member> members) {
    /** Stands for the outer datum among the line's points. */
    public static final int DATUM = 0;

    public LinkageOutline {
        members = List.copyOf(members);
    }

    /** Whether a point, zero-based, rides on the hub; false too where there is no such point. */
    public boolean endsOnHub(int point) {
        int last = -1;
        for (Member member : members) {
            last += member.shape().ends().size();
            if (point <= last) {
                return point == last && member.shape().endsOnHub();
            }
        }
        return false;
    }

    /**
     * Which point of the linkage the line goes to, from 1; {@link #DATUM} for the outer datum, and
     * for all places behind the line's end.
     *
     * @param place along the line, zero-based
     */
    public int point(int place) {
        int start = 1;
        int before = 0;
        for (Member member : members) {
            String way = way(member.shape());
            if (place < start) {
                return DATUM;
            }
            if (place < start + way.length()) {
                int end = way.charAt(place - start) - '0';
                return end == DATUM ? DATUM : before + end;
            }
            start += way.length();
            before += member.shape().ends().size();
        }
        return DATUM;
    }

    /** Along a part and back to the outer datum, by its ends from 1. */
    private static String way(Member.Shape shape) {
        return switch (shape) {
            case SQUARE_PIVOT, BALL_PIVOT -> "10";
            case PIVOT_AXIS -> "120";
            case WISHBONE -> "31230";
            case LINK -> "2120";
        };
    }
}
