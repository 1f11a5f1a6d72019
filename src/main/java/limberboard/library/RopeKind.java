package limberboard.library;

/**
 * Which rope a cordage material is.
 *
 * @param construction how it is made
 * @param diameter its nominal diameter
 */
public record RopeKind(@Required RopeConstruction construction, @Required Amount.Fixed diameter) {}
