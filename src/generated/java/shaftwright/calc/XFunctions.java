package shaftwright.calc;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.XInterface;

/** The cell functions as UNO knows them; written from the catalogue. */
@SuppressWarnings("MutablePublicArray")
public interface XFunctions extends XInterface {
    /** Methods in the order of the interface definition. */
    TypeInfo[] UNOTYPEINFO = {
        new MethodTypeInfo("length", 0, TypeInfo.ANY),
        new MethodTypeInfo("millimetres", 1, TypeInfo.ANY),
        new MethodTypeInfo("inches", 2, TypeInfo.ANY),
        new MethodTypeInfo("fractiontext", 3, TypeInfo.ANY),
        new MethodTypeInfo("decimaltext", 4, TypeInfo.ANY),
        new MethodTypeInfo("metrictext", 5, TypeInfo.ANY),
        new MethodTypeInfo("neareststep", 6, TypeInfo.ANY),
        new MethodTypeInfo("distance", 7, TypeInfo.ANY),
        new MethodTypeInfo("pointdistance", 8, TypeInfo.ANY),
        new MethodTypeInfo("reach", 9, TypeInfo.ANY),
        new MethodTypeInfo("innerangle", 10, TypeInfo.ANY),
        new MethodTypeInfo("outerangle", 11, TypeInfo.ANY),
        new MethodTypeInfo("frontangle", 12, TypeInfo.ANY),
        new MethodTypeInfo("planangle", 13, TypeInfo.ANY),
        new MethodTypeInfo("trueangle", 14, TypeInfo.ANY),
        new MethodTypeInfo("slopedrop", 15, TypeInfo.ANY),
        new MethodTypeInfo("centredistance", 16, TypeInfo.ANY),
        new MethodTypeInfo("benchlimit", 17, TypeInfo.ANY),
        new MethodTypeInfo("plungelimit", 18, TypeInfo.ANY),
        new MethodTypeInfo("overhang", 19, TypeInfo.ANY),
        new MethodTypeInfo("endlimit", 20, TypeInfo.ANY),
        new MethodTypeInfo("boregap", 21, TypeInfo.ANY),
        new MethodTypeInfo("lipgap", 22, TypeInfo.ANY),
        new MethodTypeInfo("counterboregain", 23, TypeInfo.ANY),
        new MethodTypeInfo("bootlength", 24, TypeInfo.ANY),
        new MethodTypeInfo("bootshortest", 25, TypeInfo.ANY),
        new MethodTypeInfo("bootlongest", 26, TypeInfo.ANY),
        new MethodTypeInfo("endtoend", 27, TypeInfo.ANY),
        new MethodTypeInfo("cliptoclip", 28, TypeInfo.ANY),
        new MethodTypeInfo("racespacing", 29, TypeInfo.ANY),
        new MethodTypeInfo("clipsforraces", 30, TypeInfo.ANY),
        new MethodTypeInfo("pushedspacing", 31, TypeInfo.ANY),
        new MethodTypeInfo("slackin", 32, TypeInfo.ANY),
        new MethodTypeInfo("slackout", 33, TypeInfo.ANY),
        new MethodTypeInfo("shortestspacing", 34, TypeInfo.ANY),
        new MethodTypeInfo("softslack", 35, TypeInfo.ANY),
        new MethodTypeInfo("pushin", 36, TypeInfo.ANY),
        new MethodTypeInfo("fittedangles", 37, TypeInfo.ANY),
        new MethodTypeInfo("window", 38, TypeInfo.ANY),
        new MethodTypeInfo("chooselength", 39, TypeInfo.ANY),
        new MethodTypeInfo("cuttotal", 40, TypeInfo.ANY),
        new MethodTypeInfo("splineneeded", 41, TypeInfo.ANY),
        new MethodTypeInfo("cutroom", 42, TypeInfo.ANY),
        new MethodTypeInfo("cutends", 43, TypeInfo.ANY),
        new MethodTypeInfo("grooveouterwall", 44, TypeInfo.ANY),
        new MethodTypeInfo("grooveinnerwall", 45, TypeInfo.ANY),
        new MethodTypeInfo("landwanted", 46, TypeInfo.ANY),
        new MethodTypeInfo("mockupholes", 47, TypeInfo.ANY),
        new MethodTypeInfo("stickspacing", 48, TypeInfo.ANY),
        new MethodTypeInfo("tyrediameter", 49, TypeInfo.ANY),
        new MethodTypeInfo("tyrewidth", 50, TypeInfo.ANY),
        new MethodTypeInfo("rimdiameter", 51, TypeInfo.ANY),
        new MethodTypeInfo("rollinglength", 52, TypeInfo.ANY),
        new MethodTypeInfo("wheelspeed", 53, TypeInfo.ANY),
        new MethodTypeInfo("roadspeed", 54, TypeInfo.ANY),
        new MethodTypeInfo("clearancegain", 55, TypeInfo.ANY),
        new MethodTypeInfo("trackwidth", 56, TypeInfo.ANY),
        new MethodTypeInfo("overallwidth", 57, TypeInfo.ANY),
        new MethodTypeInfo("groundclearance", 58, TypeInfo.ANY),
        new MethodTypeInfo("bumplimit", 59, TypeInfo.ANY),
        new MethodTypeInfo("travelsteps", 60, TypeInfo.ANY),
        new MethodTypeInfo("motionratio", 61, TypeInfo.ANY),
        new MethodTypeInfo("pathtable", 62, TypeInfo.ANY),
        new MethodTypeInfo("normaltravel", 63, TypeInfo.ANY),
        new MethodTypeInfo("polynomial", 64, TypeInfo.ANY),
        new MethodTypeInfo("curveallowance", 65, TypeInfo.ANY),
        new MethodTypeInfo("tapedoubt", 66, TypeInfo.ANY),
        new MethodTypeInfo("plusminus", 67, TypeInfo.ANY),
        new MethodTypeInfo("repeatdoubt", 68, TypeInfo.ANY),
        new MethodTypeInfo("rootsumsquare", 69, TypeInfo.ANY),
        new MethodTypeInfo("worstcase", 70, TypeInfo.ANY),
        new MethodTypeInfo("expanded", 71, TypeInfo.ANY),
        new MethodTypeInfo("readinggain", 72, TypeInfo.ANY),
        new MethodTypeInfo("stickallowed", 73, TypeInfo.ANY),
        new MethodTypeInfo("barstress", 74, TypeInfo.ANY),
        new MethodTypeInfo("bartorque", 75, TypeInfo.ANY),
        new MethodTypeInfo("bartwist", 76, TypeInfo.ANY),
        new MethodTypeInfo("criticalspeed", 77, TypeInfo.ANY),
        new MethodTypeInfo("splinerootshear", 78, TypeInfo.ANY),
        new MethodTypeInfo("hollowrootshear", 79, TypeInfo.ANY),
        new MethodTypeInfo("splinetoothshear", 80, TypeInfo.ANY),
        new MethodTypeInfo("splinebearing", 81, TypeInfo.ANY),
        new MethodTypeInfo("boltpreload", 82, TypeInfo.ANY),
        new MethodTypeInfo("boltarea", 83, TypeInfo.ANY),
        new MethodTypeInfo("proofload", 84, TypeInfo.ANY),
        new MethodTypeInfo("flangetorque", 85, TypeInfo.ANY),
        new MethodTypeInfo("jointfactor", 86, TypeInfo.ANY),
        new MethodTypeInfo("jointlife", 87, TypeInfo.ANY),
        new MethodTypeInfo("enginetorque", 88, TypeInfo.ANY),
        new MethodTypeInfo("slipshare", 89, TypeInfo.ANY),
        new MethodTypeInfo("griptorque", 90, TypeInfo.ANY),
        new MethodTypeInfo("groovekts", 91, TypeInfo.ANY),
        new MethodTypeInfo("shoulderkts", 92, TypeInfo.ANY),
        new MethodTypeInfo("notchfactor", 93, TypeInfo.ANY),
        new MethodTypeInfo("fatiguefactor", 94, TypeInfo.ANY),
        new MethodTypeInfo("speedangle", 95, TypeInfo.ANY)
    };

    /** A length as a number, from tape text such as 25 3/8. */
    Object length(XPropertySet document, Object length, Object unit);

    /** A length in millimetres. */
    Object millimetres(XPropertySet document, Object length, Object unit);

    /** A length in inches. */
    Object inches(XPropertySet document, Object length, Object unit);

    /** A length as inches and a fraction, 25 3/8 in. */
    Object fractiontext(XPropertySet document, Object length, Object parts, Object unit);

    /** A length as decimal inches, 25.375 in. */
    Object decimaltext(XPropertySet document, Object length, Object unit);

    /** A length as millimetres, 644.5 mm. */
    Object metrictext(XPropertySet document, Object length, Object unit);

    /** A length to the nearest step of the shop. */
    Object neareststep(XPropertySet document, Object length, Object step, Object unit);

    /** Distance of two points from how far they lie apart sideways, in height and fore-aft. */
    Object distance(XPropertySet document, Object reach, Object rise, Object foreaft, Object unit);

    /** Distance of two points from their coordinates. */
    Object pointdistance(
            XPropertySet document,
            Object xfirst,
            Object yfirst,
            Object zfirst,
            Object xsecond,
            Object ysecond,
            Object zsecond,
            Object unit);

    /** Sideways distance of two points from their distance, height and fore-aft difference. */
    Object reach(XPropertySet document, Object distance, Object rise, Object foreaft, Object unit);

    /** Angle of the inner joint, from centre to centre, shaft against flange axis. */
    Object innerangle(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object tilt,
            Object sweep,
            Object unit);

    /** Angle of the outer joint, from centre to centre, shaft against stub axis. */
    Object outerangle(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object camber,
            Object toe,
            Object unit);

    /** Angle of a shaft in front view, positive when its outer end stands higher. */
    Object frontangle(XPropertySet document, Object reach, Object rise, Object tilt, Object unit);

    /** Angle of a shaft in plan, positive when its outer end lies forward. */
    Object planangle(
            XPropertySet document, Object reach, Object foreaft, Object sweep, Object unit);

    /** Joint angle from its angles in front view and in plan. */
    Object trueangle(Object front, Object plan);

    /** How far the outer end stands off the axis for a shaft at an angle. */
    Object slopedrop(XPropertySet document, Object distance, Object angle, Object unit);

    /** Distance of the joint centres from where the datums lie. */
    Object centredistance(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object offsetinner,
            Object offsetouter,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit);

    /**
     * Travel limit of a joint at an angle, from bench readings; straight lines between them, the
     * first reading below the first angle, #N/A past the last, where nothing was read.
     */
    Object benchlimit(
            XPropertySet document, Object angle, Object angles, Object limits, Object unit);

    /** Travel limit each way of a joint of which the straight plunge is known. */
    Object plungelimit(
            XPropertySet document,
            Object plunge,
            Object residual,
            Object anglemax,
            Object angle,
            Object unit);

    /** Race centre to the shaft's end. */
    Object overhang(
            XPropertySet document, Object halfwidth, Object stub, Object counterbore, Object unit);

    /** Inward travel until the shaft's end meets the cup bottom. */
    Object endlimit(
            XPropertySet document,
            Object cupbottom,
            Object halfwidth,
            Object stub,
            Object enddiameter,
            Object angle,
            Object counterbore,
            Object unit);

    /** Gap between the tilted shaft's end and the bore of the cup, negative when they touch. */
    Object boregap(
            XPropertySet document,
            Object cupradius,
            Object halfwidth,
            Object stub,
            Object enddiameter,
            Object angle,
            Object counterbore,
            Object unit);

    /**
     * Gap between a tilted shaft that runs through it and a lip of the cup, on either side of the
     * race, negative when they touch.
     */
    Object lipgap(
            XPropertySet document,
            Object lipradius,
            Object lipdepth,
            Object travel,
            Object enddiameter,
            Object angle,
            Object unit);

    /** Slack outward that counterboring two races adds at the same clip-to-clip length. */
    Object counterboregain(
            XPropertySet document, Object counterboreinner, Object counterboreouter, Object unit);

    /**
     * Length of a boot along its middle, from one seat to the other, with the joint at an angle.
     */
    Object bootlength(
            XPropertySet document,
            Object cupseat,
            Object shaftseat,
            Object cupdiameter,
            Object shaftdiameter,
            Object travel,
            Object angle,
            Object unit);

    /**
     * Shortest fibre of a boot from seat to seat, on the side that the shaft leans to: what pinches
     * its folds.
     */
    Object bootshortest(
            XPropertySet document,
            Object cupseat,
            Object shaftseat,
            Object cupdiameter,
            Object shaftdiameter,
            Object travel,
            Object angle,
            Object unit);

    /**
     * Longest fibre of a boot from seat to seat: what tears it. A straight boot of length L has
     * fibres of the root of L squared plus the difference of its seats' radii squared.
     */
    Object bootlongest(
            XPropertySet document,
            Object cupseat,
            Object shaftseat,
            Object cupdiameter,
            Object shaftdiameter,
            Object travel,
            Object angle,
            Object unit);

    /** Overall length of a shaft from its clip-to-clip length. */
    Object endtoend(
            XPropertySet document,
            Object cliptoclip,
            Object stubinner,
            Object stubouter,
            Object unit);

    /** Clip-to-clip length of a shaft from its overall length. */
    Object cliptoclip(
            XPropertySet document,
            Object endtoend,
            Object stubinner,
            Object stubouter,
            Object unit);

    /** Race centre to race centre, from the clip-to-clip length. */
    Object racespacing(
            XPropertySet document,
            Object cliptoclip,
            Object halfwidthinner,
            Object halfwidthouter,
            Object counterboreinner,
            Object counterboreouter,
            Object unit);

    /** Clip-to-clip length that puts the races so far apart. */
    Object clipsforraces(
            XPropertySet document,
            Object racespacing,
            Object halfwidthinner,
            Object halfwidthouter,
            Object counterboreinner,
            Object counterboreouter,
            Object unit);

    /** Race spacing with the races pushed toward their cup backs so far. */
    Object pushedspacing(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object pushinner,
            Object pushouter,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit);

    /** How much longer the shaft could be before it bottoms, negative when it does. */
    Object slackin(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object inwardinner,
            Object inwardouter,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit);

    /** How much shorter the shaft could be before it pulls out, negative when it does. */
    Object slackout(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object outwardinner,
            Object outwardouter,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit);

    /**
     * Shortest race spacing at one position that neither pulls out nor takes a joint past an
     * outward stop that is not hard.
     */
    Object shortestspacing(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object inwardinner,
            Object outwardinner,
            Object inwardouter,
            Object outwardouter,
            Object softinner,
            Object softouter,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit);

    /**
     * How much shorter the shaft could be before it pulls out or takes a joint past an outward stop
     * that is not hard, negative when it does.
     */
    Object softslack(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object inwardinner,
            Object outwardinner,
            Object inwardouter,
            Object outwardouter,
            Object softinner,
            Object softouter,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit);

    /**
     * How far each race stands toward its cup's back with a shaft in, equal at both ends; negative
     * when pulled outward.
     */
    Object pushin(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit);

    /** Angles of the inner and the outer joint with a shaft in, side by side. */
    Object fittedangles(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit);

    /**
     * Shortest and longest race spacing that fit over the whole travel, side by side; the first
     * exceeds the second when none does.
     */
    Object window(
            XPropertySet document, Object travels, Object shortest, Object longest, Object unit);

    /** Length inside a window, by bias, on a whole step of the shop; #N/A when no step fits. */
    Object chooselength(
            XPropertySet document,
            Object shortest,
            Object longest,
            Object bias,
            Object step,
            Object unit);

    /** What comes off a blank in all; #NUM! when the blank is the shorter. */
    Object cuttotal(XPropertySet document, Object blanklength, Object endtoend, Object unit);

    /** Splined length that a race needs from the shaft's end. */
    Object splineneeded(
            XPropertySet document,
            Object halfwidth,
            Object stub,
            Object runout,
            Object counterbore,
            Object unit);

    /**
     * What may come off one end of a blank before its spline gets too short, negative when it is
     * already.
     */
    Object cutroom(
            XPropertySet document,
            Object splinelength,
            Object halfwidth,
            Object stub,
            Object runout,
            Object counterbore,
            Object unit);

    /**
     * What comes off the inner and the outer end, side by side: all from one end where its spline
     * stays long enough, else from both; #N/A when the blank will not do.
     */
    Object cutends(
            XPropertySet document,
            Object blanklength,
            Object endtoend,
            Object splineinner,
            Object splineouter,
            Object neededinner,
            Object neededouter,
            Object unit);

    /**
     * Shaft's end to the groove wall that the ring leans on; #NUM! when the stub is shorter than
     * the ring is thick.
     */
    Object grooveouterwall(XPropertySet document, Object stub, Object ringthickness, Object unit);

    /**
     * Shaft's end to the groove's inner wall; #NUM! when the stub is shorter than the ring is
     * thick, or the groove narrower.
     */
    Object grooveinnerwall(
            XPropertySet document,
            Object stub,
            Object ringthickness,
            Object groovewidth,
            Object unit);

    /** Least land between a groove and the shaft's end. */
    Object landwanted(XPropertySet document, Object groovedepth, Object unit);

    /** Distance of the cross holes of a mock-up stick, centre to centre. */
    Object mockupholes(XPropertySet document, Object cliptoclip, Object pindiameter, Object unit);

    /** Race centre to race centre on a mock-up stick, from its cross holes. */
    Object stickspacing(
            XPropertySet document,
            Object holes,
            Object pindiameter,
            Object halfwidthinner,
            Object halfwidthouter,
            Object counterboreinner,
            Object counterboreouter,
            Object slide,
            Object unit);

    /** Diameter of a new tyre by its size; #N/A for a size that states none, such as 7.50-16. */
    Object tyrediameter(XPropertySet document, Object size, Object unit);

    /** Section width of a tyre by its size. */
    Object tyrewidth(XPropertySet document, Object size, Object unit);

    /** Nominal rim diameter of a tyre size. */
    Object rimdiameter(XPropertySet document, Object size, Object unit);

    /** How far a tyre rolls in one turn. */
    Object rollinglength(XPropertySet document, Object diameter, Object unit);

    /** Turns of wheel and half shaft at a road speed, without slip. */
    Object wheelspeed(XPropertySet document, Object speed, Object diameter, Object unit);

    /** Road speed at so many turns of the half shaft, without slip. */
    Object roadspeed(XPropertySet document, Object rpm, Object diameter, Object unit);

    /** Ground clearance gained by another tyre, negative when lost. */
    Object clearancegain(
            XPropertySet document, Object diameter, Object diameterbefore, Object unit);

    /** Track width, between the wheels' centre planes. */
    Object trackwidth(
            XPropertySet document, Object hubface, Object spacer, Object offset, Object unit);

    /** Width over both tyres. */
    Object overallwidth(XPropertySet document, Object track, Object size, Object unit);

    /** Ground clearance at a travel. */
    Object groundclearance(
            XPropertySet document,
            Object clearanceride,
            Object travel,
            Object tyregain,
            Object unit);

    /** Bump travel that leaves the wanted ground clearance. */
    Object bumplimit(
            XPropertySet document,
            Object clearanceride,
            Object clearancewanted,
            Object tyregain,
            Object unit);

    /** The 25 travels of the workbook's tables, in a column, droop first. */
    Object travelsteps(XPropertySet document, Object droop, Object bump, Object unit);

    /** Change of one length over change of another, such as damper over wheel. */
    Object motionratio(
            XPropertySet document,
            Object lengthfirst,
            Object lengthsecond,
            Object travelfirst,
            Object travelsecond,
            Object unit);

    /**
     * Positions from tape readings: travel, sideways reach, rise, distance and doubt of the outer
     * datum, a row a travel.
     */
    Object pathtable(
            XPropertySet document,
            Object heights,
            Object distances,
            Object rideheight,
            Object innerheight,
            Object travels,
            Object graduation,
            Object unit);

    /** Travel on a scale from −1 at the lowest to 1 at the highest. */
    Object normaltravel(
            XPropertySet document, Object travel, Object lowest, Object highest, Object unit);

    /** Value of a polynomial. */
    Object polynomial(Object variable, Object coefficients);

    /** What the true path may differ from the curve through so many heights. */
    Object curveallowance(XPropertySet document, Object rows, Object travel, Object unit);

    /** Standard uncertainty of a reading to the nearest graduation. */
    Object tapedoubt(XPropertySet document, Object graduation, Object unit);

    /** Standard uncertainty of a length stated as plus or minus a limit. */
    Object plusminus(XPropertySet document, Object limit, Object unit);

    /** Standard uncertainty of the mean of repeated readings, two or more. */
    Object repeatdoubt(XPropertySet document, Object readings, Object unit);

    /** Independent contributions taken together, root of the sum of squares. */
    Object rootsumsquare(XPropertySet document, Object contributions, Object unit);

    /** All limits reached at once. */
    Object worstcase(XPropertySet document, Object limits, Object unit);

    /** Twice a standard uncertainty and a bias on top: about 95 in 100 lie inside. */
    Object expanded(XPropertySet document, Object standard, Object bias, Object unit);

    /** By how much one more reading lowers the doubt of the hub path at its height. */
    Object readinggain(
            XPropertySet document, Object doubt, Object reading, Object allowance, Object unit);

    /** How far a mock-up reading may differ from the plan before it says something. */
    Object stickallowed(XPropertySet document, Object pathdoubt, Object graduation, Object unit);

    /** Shear stress at the surface of a round bar under torque. */
    Object barstress(
            XPropertySet document, Object torque, Object diameter, Object bore, Object unit);

    /** Torque at which the surface of a round bar begins to yield. */
    Object bartorque(
            XPropertySet document, Object yieldstrength, Object diameter, Object bore, Object unit);

    /** Angle that one end of a round bar turns against the other. */
    Object bartwist(
            XPropertySet document,
            Object torque,
            Object length,
            Object diameter,
            Object bore,
            Object shearmodulus,
            Object unit);

    /**
     * First bending critical speed of a round bar between its clips, as the workbook has it; the
     * race-centre spacing, which is shorter, would give more.
     */
    Object criticalspeed(
            XPropertySet document,
            Object length,
            Object diameter,
            Object bore,
            Object elasticmodulus,
            Object density,
            Object unit);

    /** Shear stress under the roots of a 30° involute spline. */
    Object splinerootshear(
            XPropertySet document, Object torque, Object teeth, Object outside, Object unit);

    /** Shear stress under the roots of a 30° involute spline on a hollow shaft. */
    Object hollowrootshear(
            XPropertySet document,
            Object torque,
            Object teeth,
            Object outside,
            Object bore,
            Object unit);

    /** Shear stress of the teeth of a 30° involute spline. */
    Object splinetoothshear(
            XPropertySet document,
            Object torque,
            Object teeth,
            Object outside,
            Object length,
            Object misalignment,
            Object unit);

    /**
     * Pressure on the flanks of a 30° involute spline that can rock; one held by its ring counts a
     * ninth.
     */
    Object splinebearing(
            XPropertySet document,
            Object torque,
            Object teeth,
            Object outside,
            Object length,
            Object misalignment,
            Object unit);

    /** Tension of a bolt from its tightening torque. */
    Object boltpreload(
            XPropertySet document, Object torque, Object diameter, Object nutfactor, Object unit);

    /** Stress area of a metric thread, mm². */
    Object boltarea(XPropertySet document, Object diameter, Object pitch, Object unit);

    /** Tension that leaves no set in a metric bolt. */
    Object proofload(
            XPropertySet document,
            Object diameter,
            Object pitch,
            Object strengthclass,
            Object unit);

    /**
     * Torque that a bolted flange passes on by friction; #NUM! when bolts are tightened beyond 3/4
     * of proof load.
     */
    Object flangetorque(
            XPropertySet document,
            Object count,
            Object circle,
            Object diameter,
            Object pitch,
            Object strengthclass,
            Object torque,
            Object nutfactor,
            Object friction,
            Object unit);

    /** Part of a straight ball joint's capacity that is left at an angle. */
    Object jointfactor(Object angle);

    /** Life of a ball joint under steady torque, an index to compare by. */
    Object jointlife(Object capacity, Object torque, Object angle, Object rpm);

    /** Torque that an engine or a slipping clutch makes at one half shaft. */
    Object enginetorque(Object torque, Object ratio, Object efficiency, Object share);

    /** Share of one half shaft behind a limited slip differential. */
    Object slipshare(Object bias);

    /** Torque that a tyre can pass to the ground. */
    Object griptorque(
            XPropertySet document, Object friction, Object load, Object radius, Object unit);

    /** Stress concentration factor of a round-bottomed groove around a shaft in torsion. */
    Object groovekts(
            XPropertySet document, Object diameter, Object depth, Object radius, Object unit);

    /** Stress concentration factor of a shoulder with a fillet on a shaft in torsion. */
    Object shoulderkts(
            XPropertySet document, Object larger, Object smaller, Object radius, Object unit);

    /** Notch factor in fatigue, Kfs, of a stress concentration factor. */
    Object notchfactor(Object concentration, Object sensitivity);

    /** Safety factor on the Goodman line, to compare variants by: no promise of life. */
    Object fatiguefactor(Object alternating, Object mean, Object endurance, Object ultimate);

    /** Speed of a joint times its angle, rpm times degrees, to hold against its maker's limit. */
    Object speedangle(Object rpm, Object angle);
}
