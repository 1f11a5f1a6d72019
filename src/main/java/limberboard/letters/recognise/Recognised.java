package limberboard.letters.recognise;

/**
 * Something that was recognised, with its reason.
 *
 * @param id what it is: a boat's or a model's id
 * @param why the reason, in words for the reader of the letter
 */
public record Recognised(String id, String why) {}
