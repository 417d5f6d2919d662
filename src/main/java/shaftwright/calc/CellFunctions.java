package shaftwright.calc;

/** The cell functions for Calc; written from the catalogue. */
public final class CellFunctions extends Component implements XFunctions {
    static final String[] SERVICES = {"com.sun.star.sheet.AddIn", "SHAFT"};

    public CellFunctions() {
        super(CellFunctions.class.getName(), SERVICES);
    }

    @Override
    public Object length(Object length, Object unit) {
        return Call.of("LENGTH", length, unit);
    }

    @Override
    public Object millimetres(Object length, Object unit) {
        return Call.of("MILLIMETRES", length, unit);
    }

    @Override
    public Object inches(Object length, Object unit) {
        return Call.of("INCHES", length, unit);
    }

    @Override
    public Object fractiontext(Object length, Object parts, Object unit) {
        return Call.of("FRACTIONTEXT", length, parts, unit);
    }

    @Override
    public Object decimaltext(Object length, Object unit) {
        return Call.of("DECIMALTEXT", length, unit);
    }

    @Override
    public Object metrictext(Object length, Object unit) {
        return Call.of("METRICTEXT", length, unit);
    }

    @Override
    public Object neareststep(Object length, Object step, Object unit) {
        return Call.of("NEARESTSTEP", length, step, unit);
    }

    @Override
    public Object distance(Object reach, Object rise, Object foreaft, Object unit) {
        return Call.of("DISTANCE", reach, rise, foreaft, unit);
    }

    @Override
    public Object pointdistance(
            Object xfirst,
            Object yfirst,
            Object zfirst,
            Object xsecond,
            Object ysecond,
            Object zsecond,
            Object unit) {
        return Call.of("POINTDISTANCE", xfirst, yfirst, zfirst, xsecond, ysecond, zsecond, unit);
    }

    @Override
    public Object reach(Object distance, Object rise, Object foreaft, Object unit) {
        return Call.of("REACH", distance, rise, foreaft, unit);
    }

    @Override
    public Object innerangle(
            Object reach, Object rise, Object foreaft, Object tilt, Object sweep, Object unit) {
        return Call.of("INNERANGLE", reach, rise, foreaft, tilt, sweep, unit);
    }

    @Override
    public Object outerangle(
            Object reach, Object rise, Object foreaft, Object camber, Object toe, Object unit) {
        return Call.of("OUTERANGLE", reach, rise, foreaft, camber, toe, unit);
    }

    @Override
    public Object frontangle(Object reach, Object rise, Object tilt, Object unit) {
        return Call.of("FRONTANGLE", reach, rise, tilt, unit);
    }

    @Override
    public Object planangle(Object reach, Object foreaft, Object sweep, Object unit) {
        return Call.of("PLANANGLE", reach, foreaft, sweep, unit);
    }

    @Override
    public Object trueangle(Object front, Object plan) {
        return Call.of("TRUEANGLE", front, plan);
    }

    @Override
    public Object slopedrop(Object distance, Object angle, Object unit) {
        return Call.of("SLOPEDROP", distance, angle, unit);
    }

    @Override
    public Object centredistance(
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
        return Call.of(
                "CENTREDISTANCE",
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
    public Object benchlimit(Object angle, Object angles, Object limits, Object unit) {
        return Call.of("BENCHLIMIT", angle, angles, limits, unit);
    }

    @Override
    public Object plungelimit(
            Object plunge, Object residual, Object anglemax, Object angle, Object unit) {
        return Call.of("PLUNGELIMIT", plunge, residual, anglemax, angle, unit);
    }

    @Override
    public Object overhang(Object halfwidth, Object stub, Object counterbore, Object unit) {
        return Call.of("OVERHANG", halfwidth, stub, counterbore, unit);
    }

    @Override
    public Object endlimit(
            Object cupbottom,
            Object halfwidth,
            Object stub,
            Object enddiameter,
            Object angle,
            Object counterbore,
            Object unit) {
        return Call.of(
                "ENDLIMIT", cupbottom, halfwidth, stub, enddiameter, angle, counterbore, unit);
    }

    @Override
    public Object boregap(
            Object cupradius,
            Object halfwidth,
            Object stub,
            Object enddiameter,
            Object angle,
            Object counterbore,
            Object unit) {
        return Call.of(
                "BOREGAP", cupradius, halfwidth, stub, enddiameter, angle, counterbore, unit);
    }

    @Override
    public Object lipgap(
            Object lipradius,
            Object lipdepth,
            Object travel,
            Object enddiameter,
            Object angle,
            Object unit) {
        return Call.of("LIPGAP", lipradius, lipdepth, travel, enddiameter, angle, unit);
    }

    @Override
    public Object counterboregain(Object counterboreinner, Object counterboreouter, Object unit) {
        return Call.of("COUNTERBOREGAIN", counterboreinner, counterboreouter, unit);
    }

    @Override
    public Object endtoend(Object cliptoclip, Object stubinner, Object stubouter, Object unit) {
        return Call.of("ENDTOEND", cliptoclip, stubinner, stubouter, unit);
    }

    @Override
    public Object cliptoclip(Object endtoend, Object stubinner, Object stubouter, Object unit) {
        return Call.of("CLIPTOCLIP", endtoend, stubinner, stubouter, unit);
    }

    @Override
    public Object racespacing(
            Object cliptoclip,
            Object halfwidthinner,
            Object halfwidthouter,
            Object counterboreinner,
            Object counterboreouter,
            Object unit) {
        return Call.of(
                "RACESPACING",
                cliptoclip,
                halfwidthinner,
                halfwidthouter,
                counterboreinner,
                counterboreouter,
                unit);
    }

    @Override
    public Object clipsforraces(
            Object racespacing,
            Object halfwidthinner,
            Object halfwidthouter,
            Object counterboreinner,
            Object counterboreouter,
            Object unit) {
        return Call.of(
                "CLIPSFORRACES",
                racespacing,
                halfwidthinner,
                halfwidthouter,
                counterboreinner,
                counterboreouter,
                unit);
    }

    @Override
    public Object pushedspacing(
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
        return Call.of(
                "PUSHEDSPACING",
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
        return Call.of(
                "SLACKIN",
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
        return Call.of(
                "SLACKOUT",
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
    public Object pushin(
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit) {
        return Call.of("PUSHIN", reach, rise, foreaft, racespacing, camber, toe, tilt, sweep, unit);
    }

    @Override
    public Object fittedangles(
            Object reach,
            Object rise,
            Object foreaft,
            Object racespacing,
            Object camber,
            Object toe,
            Object tilt,
            Object sweep,
            Object unit) {
        return Call.of(
                "FITTEDANGLES", reach, rise, foreaft, racespacing, camber, toe, tilt, sweep, unit);
    }

    @Override
    public Object window(Object travels, Object shortest, Object longest, Object unit) {
        return Call.of("WINDOW", travels, shortest, longest, unit);
    }

    @Override
    public Object chooselength(
            Object shortest, Object longest, Object bias, Object step, Object unit) {
        return Call.of("CHOOSELENGTH", shortest, longest, bias, step, unit);
    }

    @Override
    public Object cuttotal(Object blanklength, Object endtoend, Object unit) {
        return Call.of("CUTTOTAL", blanklength, endtoend, unit);
    }

    @Override
    public Object splineneeded(
            Object halfwidth, Object stub, Object runout, Object counterbore, Object unit) {
        return Call.of("SPLINENEEDED", halfwidth, stub, runout, counterbore, unit);
    }

    @Override
    public Object cutroom(
            Object splinelength,
            Object halfwidth,
            Object stub,
            Object runout,
            Object counterbore,
            Object unit) {
        return Call.of("CUTROOM", splinelength, halfwidth, stub, runout, counterbore, unit);
    }

    @Override
    public Object cutends(
            Object blanklength,
            Object endtoend,
            Object splineinner,
            Object splineouter,
            Object neededinner,
            Object neededouter,
            Object unit) {
        return Call.of(
                "CUTENDS",
                blanklength,
                endtoend,
                splineinner,
                splineouter,
                neededinner,
                neededouter,
                unit);
    }

    @Override
    public Object grooveouterwall(Object stub, Object ringthickness, Object unit) {
        return Call.of("GROOVEOUTERWALL", stub, ringthickness, unit);
    }

    @Override
    public Object grooveinnerwall(
            Object stub, Object ringthickness, Object groovewidth, Object unit) {
        return Call.of("GROOVEINNERWALL", stub, ringthickness, groovewidth, unit);
    }

    @Override
    public Object landwanted(Object groovedepth, Object unit) {
        return Call.of("LANDWANTED", groovedepth, unit);
    }

    @Override
    public Object mockupholes(Object cliptoclip, Object pindiameter, Object unit) {
        return Call.of("MOCKUPHOLES", cliptoclip, pindiameter, unit);
    }

    @Override
    public Object tyrediameter(Object size, Object unit) {
        return Call.of("TYREDIAMETER", size, unit);
    }

    @Override
    public Object tyrewidth(Object size, Object unit) {
        return Call.of("TYREWIDTH", size, unit);
    }

    @Override
    public Object rimdiameter(Object size, Object unit) {
        return Call.of("RIMDIAMETER", size, unit);
    }

    @Override
    public Object rollinglength(Object diameter, Object unit) {
        return Call.of("ROLLINGLENGTH", diameter, unit);
    }

    @Override
    public Object wheelspeed(Object speed, Object diameter, Object unit) {
        return Call.of("WHEELSPEED", speed, diameter, unit);
    }

    @Override
    public Object roadspeed(Object rpm, Object diameter, Object unit) {
        return Call.of("ROADSPEED", rpm, diameter, unit);
    }

    @Override
    public Object clearancegain(Object diameter, Object diameterbefore, Object unit) {
        return Call.of("CLEARANCEGAIN", diameter, diameterbefore, unit);
    }

    @Override
    public Object trackwidth(Object hubface, Object spacer, Object offset, Object unit) {
        return Call.of("TRACKWIDTH", hubface, spacer, offset, unit);
    }

    @Override
    public Object overallwidth(Object track, Object size, Object unit) {
        return Call.of("OVERALLWIDTH", track, size, unit);
    }

    @Override
    public Object groundclearance(
            Object clearanceride, Object travel, Object tyregain, Object unit) {
        return Call.of("GROUNDCLEARANCE", clearanceride, travel, tyregain, unit);
    }

    @Override
    public Object bumplimit(
            Object clearanceride, Object clearancewanted, Object tyregain, Object unit) {
        return Call.of("BUMPLIMIT", clearanceride, clearancewanted, tyregain, unit);
    }

    @Override
    public Object travelsteps(Object droop, Object bump, Object unit) {
        return Call.of("TRAVELSTEPS", droop, bump, unit);
    }

    @Override
    public Object motionratio(
            Object lengthfirst,
            Object lengthsecond,
            Object travelfirst,
            Object travelsecond,
            Object unit) {
        return Call.of("MOTIONRATIO", lengthfirst, lengthsecond, travelfirst, travelsecond, unit);
    }

    @Override
    public Object pathtable(
            Object heights,
            Object distances,
            Object rideheight,
            Object innerheight,
            Object travels,
            Object graduation,
            Object unit) {
        return Call.of(
                "PATHTABLE",
                heights,
                distances,
                rideheight,
                innerheight,
                travels,
                graduation,
                unit);
    }

    @Override
    public Object normaltravel(Object travel, Object lowest, Object highest, Object unit) {
        return Call.of("NORMALTRAVEL", travel, lowest, highest, unit);
    }

    @Override
    public Object polynomial(Object variable, Object coefficients) {
        return Call.of("POLYNOMIAL", variable, coefficients);
    }

    @Override
    public Object curveallowance(Object rows, Object travel, Object unit) {
        return Call.of("CURVEALLOWANCE", rows, travel, unit);
    }

    @Override
    public Object tapedoubt(Object graduation, Object unit) {
        return Call.of("TAPEDOUBT", graduation, unit);
    }

    @Override
    public Object plusminus(Object limit, Object unit) {
        return Call.of("PLUSMINUS", limit, unit);
    }

    @Override
    public Object repeatdoubt(Object readings, Object unit) {
        return Call.of("REPEATDOUBT", readings, unit);
    }

    @Override
    public Object rootsumsquare(Object contributions, Object unit) {
        return Call.of("ROOTSUMSQUARE", contributions, unit);
    }

    @Override
    public Object worstcase(Object limits, Object unit) {
        return Call.of("WORSTCASE", limits, unit);
    }

    @Override
    public Object expanded(Object standard, Object bias, Object unit) {
        return Call.of("EXPANDED", standard, bias, unit);
    }

    @Override
    public Object barstress(Object torque, Object diameter, Object bore, Object unit) {
        return Call.of("BARSTRESS", torque, diameter, bore, unit);
    }

    @Override
    public Object bartorque(Object yieldstrength, Object diameter, Object bore, Object unit) {
        return Call.of("BARTORQUE", yieldstrength, diameter, bore, unit);
    }

    @Override
    public Object bartwist(
            Object torque,
            Object length,
            Object diameter,
            Object bore,
            Object shearmodulus,
            Object unit) {
        return Call.of("BARTWIST", torque, length, diameter, bore, shearmodulus, unit);
    }

    @Override
    public Object criticalspeed(
            Object length,
            Object diameter,
            Object bore,
            Object elasticmodulus,
            Object density,
            Object unit) {
        return Call.of("CRITICALSPEED", length, diameter, bore, elasticmodulus, density, unit);
    }

    @Override
    public Object splinerootshear(Object torque, Object teeth, Object outside, Object unit) {
        return Call.of("SPLINEROOTSHEAR", torque, teeth, outside, unit);
    }

    @Override
    public Object splinetoothshear(
            Object torque,
            Object teeth,
            Object outside,
            Object length,
            Object misalignment,
            Object unit) {
        return Call.of("SPLINETOOTHSHEAR", torque, teeth, outside, length, misalignment, unit);
    }

    @Override
    public Object splinebearing(
            Object torque,
            Object teeth,
            Object outside,
            Object length,
            Object misalignment,
            Object unit) {
        return Call.of("SPLINEBEARING", torque, teeth, outside, length, misalignment, unit);
    }

    @Override
    public Object boltpreload(Object torque, Object diameter, Object nutfactor, Object unit) {
        return Call.of("BOLTPRELOAD", torque, diameter, nutfactor, unit);
    }

    @Override
    public Object boltarea(Object diameter, Object pitch, Object unit) {
        return Call.of("BOLTAREA", diameter, pitch, unit);
    }

    @Override
    public Object proofload(Object diameter, Object pitch, Object strengthclass, Object unit) {
        return Call.of("PROOFLOAD", diameter, pitch, strengthclass, unit);
    }

    @Override
    public Object flangetorque(
            Object count,
            Object circle,
            Object diameter,
            Object pitch,
            Object strengthclass,
            Object torque,
            Object nutfactor,
            Object friction,
            Object unit) {
        return Call.of(
                "FLANGETORQUE",
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
        return Call.of("JOINTFACTOR", angle);
    }

    @Override
    public Object jointlife(Object capacity, Object torque, Object angle, Object rpm) {
        return Call.of("JOINTLIFE", capacity, torque, angle, rpm);
    }

    @Override
    public Object enginetorque(Object torque, Object ratio, Object efficiency, Object share) {
        return Call.of("ENGINETORQUE", torque, ratio, efficiency, share);
    }

    @Override
    public Object slipshare(Object bias) {
        return Call.of("SLIPSHARE", bias);
    }

    @Override
    public Object griptorque(Object friction, Object load, Object radius, Object unit) {
        return Call.of("GRIPTORQUE", friction, load, radius, unit);
    }
}
