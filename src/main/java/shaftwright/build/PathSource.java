package shaftwright.build;

/** Where a side's hub path comes from: tape readings, or a linkage that is solved. */
public sealed interface PathSource permits Readings, LinkageAtRide {}
