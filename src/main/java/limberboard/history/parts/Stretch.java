package limberboard.history.parts;

/**
 * A stretch of a list that became another: places from, inclusive, to, exclusive.
 *
 * @param from where it begins in the list before
 * @param to where it ends there; equal to {@code from} when something was put in
 * @param nowFrom where it begins in the list now
 * @param nowTo where it ends there; equal to {@code nowFrom} when something was taken out
 */
public record Stretch(int from, int to, int nowFrom, int nowTo) {}
