package shaftwright.shaft;

/**
 * A side in one of several states that a shaft must bear.
 *
 * @param name what tells the state from the others, such as "full left lock, under drive"
 * @param setup the side in that state; joints, path, margins and travel are those of all states
 */
public record StateSetup(String name, SideSetup setup) {}
