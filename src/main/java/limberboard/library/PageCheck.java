package limberboard.library;

/** Checks pages of one kind against the rest of the library. */
interface PageCheck<D extends Details> {
  /** Reports what is wrong with the page's details. */
  void check(Page<D> page, Names names, Report report);
}
