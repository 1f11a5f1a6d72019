package limberboard.desktop.write.symptom;

import limberboard.desktop.base.Background;
import limberboard.desktop.base.Delay;
import limberboard.desktop.base.Session;

/**
 * What a symptom's editor is made with.
 *
 * @param session tells the library, the boats, and the boat that is chosen
 * @param reads reads the text that is typed
 * @param trees grows the tree
 * @param plans follows the plans of all boats and plays the causes, which takes longest
 * @param pause waits for a pause in typing
 */
public record SymptomTools(
    Session session, Background reads, Background trees, Background plans, Delay pause) {}
