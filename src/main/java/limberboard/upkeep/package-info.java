/** Upkeep: what is due on a boat and when, from the intervals of procedures and the boat's log. */
package limberboard.upkeep;
