/**
 * Words that every output uses for the same thing: {@linkplain limberboard.words.Minutes minutes},
 * {@linkplain limberboard.words.TimeWords periods}, {@linkplain limberboard.words.DayWords days as
 * written} and {@linkplain limberboard.words.DayText as read}, {@linkplain
 * limberboard.words.PerCent per cent}, {@linkplain limberboard.words.ChanceWords chances},
 * {@linkplain limberboard.words.PhaseWords phases of the year}, {@linkplain
 * limberboard.words.SkillWords who does it}, {@linkplain limberboard.words.AccessWords what is
 * opened first}, {@linkplain limberboard.words.CountWords counts}, and {@linkplain
 * limberboard.words.Sentences capitals, lists and quotation marks}.
 *
 * <pre>{@code
 * import java.time.LocalDate;
 * import java.time.Period;
 * import limberboard.words.*;
 *
 * assert Minutes.words(75).equals("1 h 15 min");
 * assert PerCent.words(0.123).equals("12 %");
 * assert TimeWords.every(Period.ofYears(2)).equals("every 2 years");
 * LocalDate today = LocalDate.of(2026, 3, 15);
 * assert new DayText(today).read(DayWords.of(today)).day().orElseThrow().equals(today);
 * }</pre>
 *
 * <p><b>Choices made.</b> A wording that a second output needs belongs here, so that no two outputs
 * word one thing differently. The room lies low: it knows the library's values and nothing else,
 * and everything above it may ask it.
 *
 * <p><b>Threads.</b> Pure functions of their arguments; the day is one of them.
 */
package limberboard.words;
