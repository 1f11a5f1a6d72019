package limberboard.workings.sums;

/**
 * What people read of a sum.
 *
 * @param id lower case with hyphens
 * @param title a short title
 * @param answers the question it answers, one sentence
 * @param formula the formula in text, with the meaning of each letter
 * @param source where formula and figures come from
 * @param holds where it holds and where it does not
 */
public record SumText(
    String id, String title, String answers, String formula, String source, String holds) {}
