package limberboard.search;

/** The searched fields of the index, with how much a word found there counts. */
enum IndexField {
  /** The page's title. */
  TITLE("title", 2.2f, 0.3f),
  /** Phrases that people use for it. */
  SAID("said", 2.4f, 0.15f),
  /** The one-sentence summary. */
  SUMMARY("summary", 1.4f, 0.3f),
  /** Phrases for the answers of a symptom's checks. */
  TOLD("told", 1.0f, 0.15f),
  /** Titles and descriptions of a symptom's causes. */
  CAUSES("causes", 1.1f, 0.15f),
  /** Headings of the body. */
  HEADINGS("headings", 1.0f, 0.4f),
  /** The body's plain text, and what else the header says in sentences. */
  BODY("body", 0.8f, 0.5f),
  /** Titles of materials and tools used. */
  USES("uses", 0.5f, 0.4f),
  /** System and zones. */
  PLACE("place", 0.9f, 0.3f);

  private final String key;
  private final float boost;
  private final float lengthMatters;

  IndexField(String key, float boost, float lengthMatters) {
    this.key = key;
    this.boost = boost;
    this.lengthMatters = lengthMatters;
  }

  /** Its name in the index. */
  String key() {
    return key;
  }

  /** How much a word found here counts, against 1. */
  float boost() {
    return boost;
  }

  /** How much a long text is held against the page, 0 to 1: the {@code b} of BM25. */
  float lengthMatters() {
    return lengthMatters;
  }
}
