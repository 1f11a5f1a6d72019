package limberboard.trace.review;

/**
 * Something about a symptom page that its author should look at.
 *
 * @param pointer the key in the page's header as a JSON pointer: {@code /causes/0}
 * @param wrong what is wrong
 * @param right what would be right
 */
public record Remark(String pointer, String wrong, String right) {}
