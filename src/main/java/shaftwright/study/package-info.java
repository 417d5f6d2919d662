/**
 * What a study of a build says: whether a shaft may be cut, and what stands against it. {@link
 * shaftwright.study.SideFacts} are what a side's {@link shaftwright.study.Verdict} is drawn from:
 * lengths in mm, angles in rad, torques in N·m. Each {@link shaftwright.study.Finding} is declared
 * once, with its rank, severity, what the shop card may print, and its sentence, which is rendered
 * as text here and as a formula by the workbook. {@link shaftwright.study.CornerStudy} is what
 * holds of a wheel's travel whatever the shaft, {@link shaftwright.study.SideStudy} what holds with
 * one; {@link shaftwright.study.ScenarioVariants} what becomes of a scenario when something of it
 * is changed: levers, sweeps, trade-offs. The order of ranks is common practice, no source: what
 * breaks first is told first. {@link shaftwright.study.ParetoFront} says which of several
 * candidates none beats.
 */
package shaftwright.study;
