package limberboard.library;

/** What a page's kind adds to its header. */
public sealed interface Details permits Symptom, Procedure, Material, Model, Caution, Topic {
  /** The kind of page these details belong to. */
  Kind kind();
}
