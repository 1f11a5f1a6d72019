/**
 * New pages: from a short template of their kind ({@link limberboard.writing.start.BegunPage}), and
 * a symptom from causes and checks typed as plain lines ({@link
 * limberboard.writing.start.OutlineReader}).
 *
 * <pre>{@code
 * import limberboard.library.page.Kind;
 * import limberboard.writing.start.*;
 *
 * BegunPage blank = BegunPage.of(Kind.TOPIC, "Bends: an overview", IdWords.of("Bends"));
 * assert blank.path().equals("articles/topics/bends.md");
 * assert blank.text().text().startsWith("---\ntitle: \"Bends: an overview\"\n");
 *
 * String lines =
 *     """
 *     Causes
 *     - The seal is worn (6, replace-seal)
 *     - Rain comes in at the hatch
 *     Checks
 *     - Does it taste of salt? (1 minute)
 *       - salt: seal usually, rain never
 *       - fresh
 *     """;
 * SymptomOutline outline = OutlineReader.read("lines", lines);
 * assert outline.problems().isEmpty() && outline.causes().get(0).id().equals("seal-worn");
 * assert outline.checks().get(0).finds().get("salt").get("rain-comes-in-at").equals("never");
 * }</pre>
 *
 * <p><b>Choices made.</b> Nothing is made up: what nobody has said is left empty, and reading the
 * page says so. Two things are taken for granted and said: causes without a weight count alike, and
 * a cause named behind an answer without a word is usual.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.writing.start;
