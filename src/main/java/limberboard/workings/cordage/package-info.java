/**
 * Cordage: what a rope carries, what a sail pulls with, which diameter is thick enough, and how
 * many turns a lashing takes.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>reckon the pull of a sail with {@link limberboard.workings.cordage.SailLoad};
 *   <li>ask {@link limberboard.workings.cordage.RopeStrength} what a rope has to break at for it,
 *       with its weakest end, and for the thinnest stocked rope that does;
 *   <li>or ask {@link limberboard.workings.cordage.Lashing} for the turns of a lashing.
 * </ol>
 *
 * <pre>{@code
 * import limberboard.library.value.RopeConstruction;
 * import limberboard.library.value.RopeEnd;
 * import limberboard.workings.cordage.*;
 *
 * double area = SailLoad.headsailArea(10.5, 3.4);
 * double pull = SailLoad.pressure(SailLoad.wind(6)) * area;
 * double breaking = RopeStrength.needed(pull, RopeEnd.KNOT);
 * double thin = RopeStrength.thinnest(RopeConstruction.POLYESTER_BRAID, breaking).orElseThrow();
 * assert RopeStrength.breaking(RopeConstruction.POLYESTER_BRAID, thin) >= breaking;
 * }</pre>
 *
 * <p><b>Choices made.</b> A rope's breaking load is a figure times its diameter squared, a little
 * below what standards and tables give, so that any rope of fair quality carries it. Losses and the
 * safety factor are multiplied in the open, so that a rigger can put other figures in their place.
 * Loads are estimates for choosing ropes and nothing else: a mast, a chain plate or lifting gear is
 * not reckoned by them.
 *
 * <p><b>Threads.</b> Pure functions of numbers: newtons, metres, millimetres.
 */
package limberboard.workings.cordage;
