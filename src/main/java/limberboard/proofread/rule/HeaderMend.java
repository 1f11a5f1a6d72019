package limberboard.proofread.rule;

/**
 * A step in a page's header that mends what is found, where that step is certain, or answers it.
 */
public sealed interface HeaderMend {
  /** The list that is changed, as a JSON pointer: {@code /cautions}, {@code /checks/2/tools}. */
  String list();

  /**
   * A list gets a further entry; it is begun where the page has none.
   *
   * @param list the list as a JSON pointer
   * @param id the entry, the id of a page
   */
  record Adds(String list, String id) implements HeaderMend {}

  /**
   * A list loses an entry.
   *
   * @param list the list as a JSON pointer
   * @param at which entry, from 0
   */
  record TakesOut(String list, int at) implements HeaderMend {}

  /**
   * The author answers a finding, which is then silent.
   *
   * @param rule the finding's rule
   * @param about what the finding is about
   * @param why why it is right as it stands
   */
  record Answers(String rule, String about, String why) implements HeaderMend {
    @Override
    public String list() {
      return "/answered";
    }
  }
}
