/**
 * What a student has learnt: where drills cost, when each symptom comes back, what to play next.
 *
 * <p>To use it: keep a {@link limberboard.drill.learn.DrillRecord} of each mark in a {@link
 * limberboard.drill.learn.Progress}, and ask {@link limberboard.drill.learn.NextDrill}.
 *
 * <pre>{@code
 * import java.time.LocalDate;
 * import java.util.List;
 * import limberboard.drill.learn.*;
 *
 * LocalDate today = LocalDate.of(2026, 3, 15);
 * RepeatRule once = RepeatRule.begin(today).after(4, today);
 * assert once.due().equals(today.plusDays(1));
 * var can = List.of(new NextDrill.Can("clutch-slips", "rig", "dunlin"));
 * assert new NextDrill(new Progress("7", List.of()), can, today).chosen().isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> What comes back is a symptom, not a cause or a boat, because that is what
 * a student meets; the rule is SM-2, the oldest published one that has no figures to be fitted.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.drill.learn;
