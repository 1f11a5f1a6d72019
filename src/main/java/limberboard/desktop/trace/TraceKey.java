package limberboard.desktop.trace;

/**
 * Which trace it is: there is one a boat and symptom.
 *
 * @param boat the boat's id
 * @param symptom the symptom's id
 */
record TraceKey(String boat, String symptom) {}
