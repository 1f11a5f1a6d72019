package limberboard.upkeep.shopping;

/**
 * Work or a rope that nothing is bought for.
 *
 * @param of the work, or the rope
 * @param why the reason, in a sentence without its full stop
 */
public record LeftOut(BoughtFor of, String why) {}
