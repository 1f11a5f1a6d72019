/**
 * A page's text for a proofreader: {@linkplain limberboard.proofread.text.ReadWork work} with its
 * lists and {@linkplain limberboard.proofread.text.TextPiece pieces}, {@linkplain
 * limberboard.proofread.text.Sentence sentences} in words and stems, {@linkplain
 * limberboard.proofread.text.Phrase phrases} to look for, {@linkplain
 * limberboard.proofread.text.ThingNames what things are called}, and {@linkplain
 * limberboard.proofread.text.Figure figures} with their units.
 *
 * <pre>{@code
 * import limberboard.proofread.text.*;
 *
 * Sentence sentence = Sentence.one("Parting the fuel hose takes five minutes, never petrol.");
 * assert sentence.has(Phrase.of("part … hose"));
 * assert sentence.deniedBefore(Phrase.of("petrol").in(sentence), 2);
 * assert Figure.in(sentence).get(0).least() == 5;
 * }</pre>
 *
 * <p><b>Choices made.</b> Words are compared by the stems of {@link limberboard.words.Stem}, as
 * cautions find their steps, and names by the library's own titles and phrases. No grammar is
 * parsed: what is denied is what has <i>no</i>, <i>never</i> or the like a few words before it.
 *
 * <p><b>Threads.</b> All immutable.
 */
package limberboard.proofread.text;
