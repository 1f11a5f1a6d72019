package limberboard.upkeep.shopping;

import limberboard.library.page.Page;
import limberboard.library.page.Procedure;

/**
 * Work that nothing is bought for.
 *
 * @param work the procedure's page
 * @param why the reason, in a sentence without its full stop
 */
public record LeftOut(Page<Procedure> work, String why) {}
