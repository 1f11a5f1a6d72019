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
 * <p><b>Choices made.</b> A wording that a second output needs belongs here, so that no two outputs
 * word one thing differently. The room lies low: it knows the library's values and nothing else,
 * and everything above it may ask it.
 */
package limberboard.words;
