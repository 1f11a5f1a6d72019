/**
 * Hostile files: a driver that changes files of a workspace at random, and attacks made by hand,
 * through the commands of the terminal. See {@code docs/robustness.md}.
 */
package limberboard.fuzz;
