package shaftwright.calc;

import com.sun.star.beans.XPropertySet;
import com.sun.star.uno.XComponentContext;

/** The cell functions for Calc; written from the catalogue. */
public final class CellFunctions extends Component implements XFunctions {
    static final String[] SERVICES = {"com.sun.star.sheet.AddIn", "SHAFT"};
    private final Call call;

    public CellFunctions(XComponentContext context) {
        super(CellFunctions.class.getName(), SERVICES);
        call = new Call(new DocumentUnits(context));
    }

    @Override
    public Object length(XPropertySet document, Object length, Object unit) {
        return call.of("LENGTH", document, length, unit);
    }

    @Override
    public Object millimetres(XPropertySet document, Object length, Object unit) {
        return call.of("MILLIMETRES", document, length, unit);
    }

    @Override
    public Object inches(XPropertySet document, Object length, Object unit) {
        return call.of("INCHES", document, length, unit);
    }

    @Override
    public Object fractiontext(XPropertySet document, Object length, Object parts, Object unit) {
        return call.of("FRACTIONTEXT", document, length, parts, unit);
    }

    @Override
    public Object decimaltext(XPropertySet document, Object length, Object unit) {
        return call.of("DECIMALTEXT", document, length, unit);
    }

    @Override
    public Object metrictext(XPropertySet document, Object length, Object unit) {
        return call.of("METRICTEXT", document, length, unit);
    }

    @Override
    public Object neareststep(XPropertySet document, Object length, Object step, Object unit) {
        return call.of("NEARESTSTEP", document, length, step, unit);
    }

    @Override
    public Object distance(
            XPropertySet document, Object reach, Object rise, Object foreaft, Object unit) {
        return call.of("DISTANCE", document, reach, rise, foreaft, unit);
    }

    @Override
    public Object pointdistance(
            XPropertySet document,
            Object xfirst,
            Object yfirst,
            Object zfirst,
            Object xsecond,
            Object ysecond,
            Object zsecond,
            Object unit) {
        return call.of(
                "POINTDISTANCE", document, xfirst, yfirst, zfirst, xsecond, ysecond, zsecond, unit);
    }

    @Override
    public Object reach(
            XPropertySet document, Object distance, Object rise, Object foreaft, Object unit) {
        return call.of("REACH", document, distance, rise, foreaft, unit);
    }

    @Override
    public Object innerangle(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object tilt,
            Object sweep,
            Object unit) {
        return call.of("INNERANGLE", document, reach, rise, foreaft, tilt, sweep, unit);
    }

    @Override
    public Object outerangle(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object camber,
            Object toe,
            Object unit) {
        return call.of("OUTERANGLE", document, reach, rise, foreaft, camber, toe, unit);
    }

    @Override
    public Object frontangle(
            XPropertySet document, Object reach, Object rise, Object tilt, Object unit) {
        return call.of("FRONTANGLE", document, reach, rise, tilt, unit);
    }

    @Override
    public Object planangle(
            XPropertySet document, Object reach, Object foreaft, Object sweep, Object unit) {
        return call.of("PLANANGLE", document, reach, foreaft, sweep, unit);
    }

    @Override
    public Object trueangle(Object front, Object plan) {
        return call.of("TRUEANGLE", null, front, plan);
    }

    @Override
    public Object slopedrop(XPropertySet document, Object distance, Object angle, Object unit) {
        return call.of("SLOPEDROP", document, distance, angle, unit);
    }

    @Override
    public Object centredistance(
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
            Object unit) {
        return call.of(
                "CENTREDISTANCE",
                document,
                reach,
                rise,
                foreaft,
                offsetinner,
                offsetouter,
                camber,
                toe,
                tilt,
                sweep,
                unit);
    }

    @Override
    public Object benchlimit(
            XPropertySet document, Object angle, Object angles, Object limits, Object unit) {
        return call.of("BENCHLIMIT", document, angle, angles, limits, unit);
    }

    @Override
    public Object plungelimit(
            XPropertySet document,
            Object plunge,
            Object residual,
            Object anglemax,
            Object angle,
            Object unit) {
        return call.of("PLUNGELIMIT", document, plunge, residual, anglemax, angle, unit);
    }

    @Override
    public Object overhang(
            XPropertySet document, Object halfwidth, Object stub, Object counterbore, Object unit) {
        return call.of("OVERHANG", document, halfwidth, stub, counterbore, unit);
    }

    @Override
    public Object endlimit(
            XPropertySet document,
            Object cupbottom,
            Object halfwidth,
            Object stub,
            Object enddiameter,
            Object angle,
            Object counterbore,
            Object unit) {
        return call.of(
                "ENDLIMIT",
                document,
                cupbottom,
                halfwidth,
                stub,
                enddiameter,
                angle,
                counterbore,
                unit);
    }

    @Override
    public Object boregap(
            XPropertySet document,
            Object cupradius,
            Object halfwidth,
            Object stub,
            Object enddiameter,
            Object angle,
            Object counterbore,
            Object unit) {
        return call.of(
                "BOREGAP",
                document,
                cupradius,
                halfwidth,
                stub,
                enddiameter,
                angle,
                counterbore,
                unit);
    }

    @Override
    public Object lipgap(
            XPropertySet document,
            Object lipradius,
            Object lipdepth,
            Object travel,
            Object enddiameter,
            Object angle,
            Object unit) {
        return call.of("LIPGAP", document, lipradius, lipdepth, travel, enddiameter, angle, unit);
    }

    @Override
    public Object counterboregain(
            XPropertySet document, Object counterboreinner, Object counterboreouter, Object unit) {
        return call.of("COUNTERBOREGAIN", document, counterboreinner, counterboreouter, unit);
    }

    @Override
    public Object bootlength(
            XPropertySet document,
            Object cupseat,
            Object shaftseat,
            Object cupdiameter,
            Object shaftdiameter,
            Object travel,
            Object angle,
            Object unit) {
        return call.of(
                "BOOTLENGTH",
                document,
                cupseat,
                shaftseat,
                cupdiameter,
                shaftdiameter,
                travel,
                angle,
                unit);
    }

    @Override
    public Object bootshortest(
            XPropertySet document,
            Object cupseat,
            Object shaftseat,
            Object cupdiameter,
            Object shaftdiameter,
            Object travel,
            Object angle,
            Object unit) {
        return call.of(
                "BOOTSHORTEST",
                document,
                cupseat,
                shaftseat,
                cupdiameter,
                shaftdiameter,
                travel,
                angle,
                unit);
    }

    @Override
    public Object bootlongest(
            XPropertySet document,
            Object cupseat,
            Object shaftseat,
            Object cupdiameter,
            Object shaftdiameter,
            Object travel,
            Object angle,
            Object unit) {
        return call.of(
                "BOOTLONGEST",
                document,
                cupseat,
                shaftseat,
                cupdiameter,
                shaftdiameter,
                travel,
                angle,
                unit);
    }

    @Override
    public Object endtoend(
            XPropertySet document,
            Object cliptoclip,
            Object stubinner,
            Object stubouter,
            Object unit) {
        return call.of("ENDTOEND", document, cliptoclip, stubinner, stubouter, unit);
    }

    @Override
    public Object cliptoclip(
            XPropertySet document,
            Object endtoend,
            Object stubinner,
            Object stubouter,
            Object unit) {
        return call.of("CLIPTOCLIP", document, endtoend, stubinner, stubouter, unit);
    }

    @Override
    public Object racespacing(
            XPropertySet document,
            Object cliptoclip,
            Object halfwidthinner,
            Object halfwidthouter,
            Object counterboreinner,
            Object counterboreouter,
            Object unit) {
        return call.of(
                "RACESPACING",
                document,
                cliptoclip,
                halfwidthinner,
                halfwidthouter,
                counterboreinner,
                counterboreouter,
                unit);
    }

    @Override
    public Object clipsforraces(
            XPropertySet document,
            Object racespacing,
            Object halfwidthinner,
            Object halfwidthouter,
            Object counterboreinner,
            Object counterboreouter,
            Object unit) {
        return call.of(
                "CLIPSFORRACES",
                document,
                racespacing,
                halfwidthinner,
                halfwidthouter,
                counterboreinner,
                counterboreouter,
                unit);
    }

    @Override
    public Object pushedspacing(
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
            Object unit) {
        return call.of(
                "PUSHEDSPACING",
                document,
                reach,
                rise,
                foreaft,
                pushinner,
                pushouter,
                camber,
                toe,
                tilt,
                sweep,
                unit);
    }

    @Override
    public Object slackin(
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
            Object unit) {
        return call.of(
                "SLACKIN",
                document,
                reach,
                rise,
                foreaft,
                racespacing,
                inwardinner,
                inwardouter,
                camber,
                toe,
                tilt,
                sweep,
                unit);
    }

    @Override
    public Object slackout(
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
            Object unit) {
        return call.of(
                "SLACKOUT",
                document,
                reach,
                rise,
                foreaft,
                racespacing,
                outwardinner,
                outwardouter,
                camber,
                toe,
                tilt,
                sweep,
                unit);
    }

    @Override
    public Object shortestspacing(
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
            Object unit) {
        return call.of(
                "SHORTESTSPACING",
                document,
                reach,
                rise,
                foreaft,
                inwardinner,
                outwardinner,
                inwardouter,
                outwardouter,
                softinner,
                softouter,
                camber,
                toe,
                tilt,
                sweep,
                unit);
    }

    @Override
    public Object softslack(
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
            Object unit) {
        return call.of(
                "SOFTSLACK",
                document,
                reach,
                rise,
                foreaft,
                racespacing,
                inwardinner,
                outwardinner,
                inwardouter,
                outwardouter,
                softinner,
                softouter,
                camber,
                toe,
                tilt,
                sweep,
                unit);
    }

    @Override
    public Object pushin(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit) {
        return call.of(
                "PUSHIN",
                document,
                reach,
                rise,
                foreaft,
                racespacing,
                camber,
                toe,
                tilt,
                sweep,
                unit);
    }

    @Override
    public Object fittedangles(
            XPropertySet document,
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit) {
        return call.of(
                "FITTEDANGLES",
                document,
                reach,
                rise,
                foreaft,
                racespacing,
                camber,
                toe,
                tilt,
                sweep,
                unit);
    }

    @Override
    public Object window(
            XPropertySet document, Object travels, Object shortest, Object longest, Object unit) {
        return call.of("WINDOW", document, travels, shortest, longest, unit);
    }

    @Override
    public Object chooselength(
            XPropertySet document,
            Object shortest,
            Object longest,
            Object bias,
            Object step,
            Object unit) {
        return call.of("CHOOSELENGTH", document, shortest, longest, bias, step, unit);
    }

    @Override
    public Object cuttotal(
            XPropertySet document, Object blanklength, Object endtoend, Object unit) {
        return call.of("CUTTOTAL", document, blanklength, endtoend, unit);
    }

    @Override
    public Object splineneeded(
            XPropertySet document,
            Object halfwidth,
            Object stub,
            Object runout,
            Object counterbore,
            Object unit) {
        return call.of("SPLINENEEDED", document, halfwidth, stub, runout, counterbore, unit);
    }

    @Override
    public Object cutroom(
            XPropertySet document,
            Object splinelength,
            Object halfwidth,
            Object stub,
            Object runout,
            Object counterbore,
            Object unit) {
        return call.of(
                "CUTROOM", document, splinelength, halfwidth, stub, runout, counterbore, unit);
    }

    @Override
    public Object cutends(
            XPropertySet document,
            Object blanklength,
            Object endtoend,
            Object splineinner,
            Object splineouter,
            Object neededinner,
            Object neededouter,
            Object unit) {
        return call.of(
                "CUTENDS",
                document,
                blanklength,
                endtoend,
                splineinner,
                splineouter,
                neededinner,
                neededouter,
                unit);
    }

    @Override
    public Object grooveouterwall(
            XPropertySet document, Object stub, Object ringthickness, Object unit) {
        return call.of("GROOVEOUTERWALL", document, stub, ringthickness, unit);
    }

    @Override
    public Object grooveinnerwall(
            XPropertySet document,
            Object stub,
            Object ringthickness,
            Object groovewidth,
            Object unit) {
        return call.of("GROOVEINNERWALL", document, stub, ringthickness, groovewidth, unit);
    }

    @Override
    public Object landwanted(XPropertySet document, Object groovedepth, Object unit) {
        return call.of("LANDWANTED", document, groovedepth, unit);
    }

    @Override
    public Object mockupholes(
            XPropertySet document, Object cliptoclip, Object pindiameter, Object unit) {
        return call.of("MOCKUPHOLES", document, cliptoclip, pindiameter, unit);
    }

    @Override
    public Object stickspacing(
            XPropertySet document,
            Object holes,
            Object pindiameter,
            Object halfwidthinner,
            Object halfwidthouter,
            Object counterboreinner,
            Object counterboreouter,
            Object slide,
            Object unit) {
        return call.of(
                "STICKSPACING",
                document,
                holes,
                pindiameter,
                halfwidthinner,
                halfwidthouter,
                counterboreinner,
                counterboreouter,
                slide,
                unit);
    }

    @Override
    public Object tyrediameter(XPropertySet document, Object size, Object unit) {
        return call.of("TYREDIAMETER", document, size, unit);
    }

    @Override
    public Object tyrewidth(XPropertySet document, Object size, Object unit) {
        return call.of("TYREWIDTH", document, size, unit);
    }

    @Override
    public Object rimdiameter(XPropertySet document, Object size, Object unit) {
        return call.of("RIMDIAMETER", document, size, unit);
    }

    @Override
    public Object rollinglength(XPropertySet document, Object diameter, Object unit) {
        return call.of("ROLLINGLENGTH", document, diameter, unit);
    }

    @Override
    public Object wheelspeed(XPropertySet document, Object speed, Object diameter, Object unit) {
        return call.of("WHEELSPEED", document, speed, diameter, unit);
    }

    @Override
    public Object roadspeed(XPropertySet document, Object rpm, Object diameter, Object unit) {
        return call.of("ROADSPEED", document, rpm, diameter, unit);
    }

    @Override
    public Object clearancegain(
            XPropertySet document, Object diameter, Object diameterbefore, Object unit) {
        return call.of("CLEARANCEGAIN", document, diameter, diameterbefore, unit);
    }

    @Override
    public Object trackwidth(
            XPropertySet document, Object hubface, Object spacer, Object offset, Object unit) {
        return call.of("TRACKWIDTH", document, hubface, spacer, offset, unit);
    }

    @Override
    public Object overallwidth(XPropertySet document, Object track, Object size, Object unit) {
        return call.of("OVERALLWIDTH", document, track, size, unit);
    }

    @Override
    public Object groundclearance(
            XPropertySet document,
            Object clearanceride,
            Object travel,
            Object tyregain,
            Object unit) {
        return call.of("GROUNDCLEARANCE", document, clearanceride, travel, tyregain, unit);
    }

    @Override
    public Object bumplimit(
            XPropertySet document,
            Object clearanceride,
            Object clearancewanted,
            Object tyregain,
            Object unit) {
        return call.of("BUMPLIMIT", document, clearanceride, clearancewanted, tyregain, unit);
    }

    @Override
    public Object travelsteps(XPropertySet document, Object droop, Object bump, Object unit) {
        return call.of("TRAVELSTEPS", document, droop, bump, unit);
    }

    @Override
    public Object motionratio(
            XPropertySet document,
            Object lengthfirst,
            Object lengthsecond,
            Object travelfirst,
            Object travelsecond,
            Object unit) {
        return call.of(
                "MOTIONRATIO",
                document,
                lengthfirst,
                lengthsecond,
                travelfirst,
                travelsecond,
                unit);
    }

    @Override
    public Object pathtable(
            XPropertySet document,
            Object heights,
            Object distances,
            Object rideheight,
            Object innerheight,
            Object travels,
            Object graduation,
            Object unit) {
        return call.of(
                "PATHTABLE",
                document,
                heights,
                distances,
                rideheight,
                innerheight,
                travels,
                graduation,
                unit);
    }

    @Override
    public Object normaltravel(
            XPropertySet document, Object travel, Object lowest, Object highest, Object unit) {
        return call.of("NORMALTRAVEL", document, travel, lowest, highest, unit);
    }

    @Override
    public Object polynomial(Object variable, Object coefficients) {
        return call.of("POLYNOMIAL", null, variable, coefficients);
    }

    @Override
    public Object curveallowance(XPropertySet document, Object rows, Object travel, Object unit) {
        return call.of("CURVEALLOWANCE", document, rows, travel, unit);
    }

    @Override
    public Object tapedoubt(XPropertySet document, Object graduation, Object unit) {
        return call.of("TAPEDOUBT", document, graduation, unit);
    }

    @Override
    public Object plusminus(XPropertySet document, Object limit, Object unit) {
        return call.of("PLUSMINUS", document, limit, unit);
    }

    @Override
    public Object repeatdoubt(XPropertySet document, Object readings, Object unit) {
        return call.of("REPEATDOUBT", document, readings, unit);
    }

    @Override
    public Object rootsumsquare(XPropertySet document, Object contributions, Object unit) {
        return call.of("ROOTSUMSQUARE", document, contributions, unit);
    }

    @Override
    public Object worstcase(XPropertySet document, Object limits, Object unit) {
        return call.of("WORSTCASE", document, limits, unit);
    }

    @Override
    public Object expanded(XPropertySet document, Object standard, Object bias, Object unit) {
        return call.of("EXPANDED", document, standard, bias, unit);
    }

    @Override
    public Object readinggain(
            XPropertySet document, Object doubt, Object reading, Object allowance, Object unit) {
        return call.of("READINGGAIN", document, doubt, reading, allowance, unit);
    }

    @Override
    public Object stickallowed(
            XPropertySet document, Object pathdoubt, Object graduation, Object unit) {
        return call.of("STICKALLOWED", document, pathdoubt, graduation, unit);
    }

    @Override
    public Object barstress(
            XPropertySet document, Object torque, Object diameter, Object bore, Object unit) {
        return call.of("BARSTRESS", document, torque, diameter, bore, unit);
    }

    @Override
    public Object bartorque(
            XPropertySet document,
            Object yieldstrength,
            Object diameter,
            Object bore,
            Object unit) {
        return call.of("BARTORQUE", document, yieldstrength, diameter, bore, unit);
    }

    @Override
    public Object bartwist(
            XPropertySet document,
            Object torque,
            Object length,
            Object diameter,
            Object bore,
            Object shearmodulus,
            Object unit) {
        return call.of("BARTWIST", document, torque, length, diameter, bore, shearmodulus, unit);
    }

    @Override
    public Object criticalspeed(
            XPropertySet document,
            Object length,
            Object diameter,
            Object bore,
            Object elasticmodulus,
            Object density,
            Object unit) {
        return call.of(
                "CRITICALSPEED", document, length, diameter, bore, elasticmodulus, density, unit);
    }

    @Override
    public Object splinerootshear(
            XPropertySet document, Object torque, Object teeth, Object outside, Object unit) {
        return call.of("SPLINEROOTSHEAR", document, torque, teeth, outside, unit);
    }

    @Override
    public Object hollowrootshear(
            XPropertySet document,
            Object torque,
            Object teeth,
            Object outside,
            Object bore,
            Object unit) {
        return call.of("HOLLOWROOTSHEAR", document, torque, teeth, outside, bore, unit);
    }

    @Override
    public Object splinetoothshear(
            XPropertySet document,
            Object torque,
            Object teeth,
            Object outside,
            Object length,
            Object misalignment,
            Object unit) {
        return call.of(
                "SPLINETOOTHSHEAR", document, torque, teeth, outside, length, misalignment, unit);
    }

    @Override
    public Object splinebearing(
            XPropertySet document,
            Object torque,
            Object teeth,
            Object outside,
            Object length,
            Object misalignment,
            Object unit) {
        return call.of(
                "SPLINEBEARING", document, torque, teeth, outside, length, misalignment, unit);
    }

    @Override
    public Object boltpreload(
            XPropertySet document, Object torque, Object diameter, Object nutfactor, Object unit) {
        return call.of("BOLTPRELOAD", document, torque, diameter, nutfactor, unit);
    }

    @Override
    public Object boltarea(XPropertySet document, Object diameter, Object pitch, Object unit) {
        return call.of("BOLTAREA", document, diameter, pitch, unit);
    }

    @Override
    public Object proofload(
            XPropertySet document,
            Object diameter,
            Object pitch,
            Object strengthclass,
            Object unit) {
        return call.of("PROOFLOAD", document, diameter, pitch, strengthclass, unit);
    }

    @Override
    public Object flangetorque(
            XPropertySet document,
            Object count,
            Object circle,
            Object diameter,
            Object pitch,
            Object strengthclass,
            Object torque,
            Object nutfactor,
            Object friction,
            Object unit) {
        return call.of(
                "FLANGETORQUE",
                document,
                count,
                circle,
                diameter,
                pitch,
                strengthclass,
                torque,
                nutfactor,
                friction,
                unit);
    }

    @Override
    public Object jointfactor(Object angle) {
        return call.of("JOINTFACTOR", null, angle);
    }

    @Override
    public Object jointlife(Object capacity, Object torque, Object angle, Object rpm) {
        return call.of("JOINTLIFE", null, capacity, torque, angle, rpm);
    }

    @Override
    public Object enginetorque(Object torque, Object ratio, Object efficiency, Object share) {
        return call.of("ENGINETORQUE", null, torque, ratio, efficiency, share);
    }

    @Override
    public Object slipshare(Object bias) {
        return call.of("SLIPSHARE", null, bias);
    }

    @Override
    public Object griptorque(
            XPropertySet document, Object friction, Object load, Object radius, Object unit) {
        return call.of("GRIPTORQUE", document, friction, load, radius, unit);
    }

    @Override
    public Object groovekts(
            XPropertySet document, Object diameter, Object depth, Object radius, Object unit) {
        return call.of("GROOVEKTS", document, diameter, depth, radius, unit);
    }

    @Override
    public Object shoulderkts(
            XPropertySet document, Object larger, Object smaller, Object radius, Object unit) {
        return call.of("SHOULDERKTS", document, larger, smaller, radius, unit);
    }

    @Override
    public Object notchfactor(Object concentration, Object sensitivity) {
        return call.of("NOTCHFACTOR", null, concentration, sensitivity);
    }

    @Override
    public Object fatiguefactor(
            Object alternating, Object mean, Object endurance, Object ultimate) {
        return call.of("FATIGUEFACTOR", null, alternating, mean, endurance, ultimate);
    }

    @Override
    public Object speedangle(Object rpm, Object angle) {
        return call.of("SPEEDANGLE", null, rpm, angle);
    }
}
