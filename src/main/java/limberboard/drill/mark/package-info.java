/**
 * Marks of drills: skill apart from luck, dangers, said certainty, and each step gone through.
 *
 * <p>To use it: give a {@link limberboard.drill.DrillRun} to a {@link
 * limberboard.drill.mark.DrillMarker}; over several drills, see {@link
 * limberboard.drill.mark.Calibration}.
 *
 * <pre>{@code
 * import java.util.List;
 * import limberboard.drill.mark.*;
 *
 * // said 80 % twice, and it was so once
 * var said = List.of(new Certainty(0.8, true, 0.7), new Certainty(0.8, false, 0.7));
 * assert Math.abs(Certainty.brier(said).getAsDouble() - (0.04 + 0.64) / 2) < 1e-12;
 * assert Math.abs(Calibration.of(said, 5).off() - 0.3) < 1e-12;
 * }</pre>
 *
 * <p><b>Choices made.</b> The skill mark is the sum of what each step cost on average more than the
 * best one there ({@code limberboard.effort.Regrets}); minutes are told beside it, with what the
 * best plan took with the same hidden fault and the same answers. A hint costs ten minutes of the
 * mark. Dangers are counted for themselves and never set off against minutes.
 *
 * <p><b>Threads.</b> Values are immutable; a marker belongs to one thread.
 */
package limberboard.drill.mark;
