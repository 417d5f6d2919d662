package shaftwright.study;

/**
 * Where one side's hub goes, which stays as it is while anything but its pick-up points is changed.
 *
 * @param path what tells it
 * @param corner the hub on that way, among dampers and straps
 */
public record HubCourse(PathStudy path, CornerStudy corner) {}
