package limberboard.desktop.letters;

import limberboard.letters.inbox.LetterState;

/** Which letters of the inbox are shown. */
enum InboxFilter {
  /** Those that somebody still has to look at. */
  TO_DO("To do") {
    @Override
    boolean takes(InboxRow row) {
      return row.state().isOpen();
    }
  },
  /** Those of which the program says that they are urgent. */
  URGENT("Urgent") {
    @Override
    boolean takes(InboxRow row) {
      return row.isUrgent();
    }
  },
  /** Those whose owner is to write back. */
  WAITING("Waiting") {
    @Override
    boolean takes(InboxRow row) {
      return row.state() == LetterState.WAITING;
    }
  },
  /** Those that were answered or closed. */
  DONE("Done") {
    @Override
    boolean takes(InboxRow row) {
      return !row.state().isOpen();
    }
  },
  /** All. */
  ALL("All letters") {
    @Override
    boolean takes(InboxRow row) {
      return true;
    }
  };

  private final String title;

  InboxFilter(String title) {
    this.title = title;
  }

  /** What a person reads. */
  String title() {
    return title;
  }

  abstract boolean takes(InboxRow row);
}
