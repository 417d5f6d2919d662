package shaftwright.shaft;

import java.util.Arrays;
import java.util.List;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.NoLateralReachException;

/**
 * The race-centre spacings that serve in every one of a side's states: the intersection of the
 * states' {@link LengthWindow length windows}.
 */
public final class StatesWindow {
    private final List<StateSetup> states;
    private final List<List<Position>> tables;
    private Binding shortest = new Binding(Double.NEGATIVE_INFINITY, 0, 0);
    private Binding longest = new Binding(Double.POSITIVE_INFINITY, 0, 0);

    private StatesWindow(List<StateSetup> states, List<List<Position>> tables) {
        this.states = states;
        this.tables = tables;
    }

    /**
     * The window over these states, which share path and travel. Ends are those of the states'
     * windows, and of what lies between them: where a position asks for most at a turn between its
     * neighbours, the vertex of the parabola through the three counts, as it does over the travel.
     *
     * @param states where only the steering differs, one behind the other in the order of their
     *     turns
     * @throws IllegalArgumentException if there is none
     * @throws NoLateralReachException if the hub path has none somewhere
     */
    public static StatesWindow of(List<StateSetup> states) {
        if (states.isEmpty()) {
            throw new IllegalArgumentException("a window over states needs one; have none");
        }
        SideSetup any = states.get(0).setup();
        List<HubPoint> hubs =
                Arrays.stream(TravelSteps.of(any.droop(), any.bump()))
                        .mapToObj(any.path()::at)
                        .toList();
        StatesWindow all =
                new StatesWindow(
                        List.copyOf(states),
                        states.stream().map(one -> Position.table(one.setup(), hubs)).toList());
        for (int state = 0; state < states.size(); state++) {
            all.meet(LengthWindow.of(all.tables.get(state)), states.get(state).name());
        }
        for (int first = 0; first < states.size(); first = all.endOfTurns(first)) {
            all.betweenTurns(first, all.endOfTurns(first));
        }
        return all;
    }

    private void meet(LengthWindow window, String state) {
        meetShortest(window.shortest(), state);
        meetLongest(window.longest(), state);
    }

    private void meetShortest(Binding end, String state) {
        if (end.value() > shortest.value()) {
            shortest = end.in(state);
        }
    }

    private void meetLongest(Binding end, String state) {
        if (end.value() < longest.value()) {
            longest = end.in(state);
        }
    }

    /** The first state behind this one whose flange stands elsewhere. */
    private int endOfTurns(int first) {
        int end = first + 1;
        while (end < states.size()
                && states.get(end).setup().flange().equals(states.get(first).setup().flange())) {
            end++;
        }
        return end;
    }

    private void betweenTurns(int first, int end) {
        double[] turns = new double[end - first];
        double[] shorter = new double[end - first];
        double[] longer = new double[end - first];
        for (int row = 0; row < TravelSteps.COUNT; row++) {
            for (int at = 0; at < turns.length; at++) {
                Position position = tables.get(first + at).get(row);
                turns[at] = states.get(first + at).setup().steer().angle();
                shorter[at] = position.shortest();
                longer[at] = position.longest();
            }
            double travel = tables.get(first).get(row).travel();
            Binding most = Extremes.greatestWithin(turns, shorter);
            meetShortest(new Binding(most.value(), row, travel), name(first + most.row()));
            Binding least = Extremes.leastWithin(turns, longer);
            meetLongest(new Binding(least.value(), row, travel), name(first + least.row()));
        }
    }

    private String name(int state) {
        return states.get(state).name();
    }

    /** {@code S_min}: the greatest of all states' shortest spacings, mm. */
    public Binding shortest() {
        return shortest;
    }

    /** {@code S_max}: the least of all states' longest spacings, mm. */
    public Binding longest() {
        return longest;
    }

    /** The states, in the order in which they were given. */
    public List<StateSetup> states() {
        return states;
    }

    /** The position tables of the states, in their order. */
    List<List<Position>> tables() {
        return tables;
    }

    /** The row of a state's position table at or beside which an end of the window is set. */
    public Position at(Binding end) {
        for (int state = 0; state < states.size(); state++) {
            if (states.get(state).name().equals(end.state())) {
                return tables.get(state).get(end.row());
            }
        }
        throw new IllegalArgumentException("no state is called " + end.state());
    }
}
