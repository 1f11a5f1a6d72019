/**
 * What all aspects of upkeep share: the boat, the day and what is due ({@link
 * limberboard.desktop.upkeep.state.UpkeepModel}), and what an aspect is.
 *
 * <p><b>Choices made.</b> Boat and day are those of the whole place.
 */
package limberboard.desktop.upkeep.state;
