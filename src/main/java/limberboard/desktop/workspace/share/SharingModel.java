package limberboard.desktop.workspace.share;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Tried;
import limberboard.history.Author;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.library.value.Own;
import limberboard.sharing.PullOutcome;
import limberboard.sharing.PullWish;
import limberboard.sharing.Sending;
import limberboard.sharing.Settlement;
import limberboard.sharing.Sharing;
import limberboard.sharing.merge.Choice;
import limberboard.sharing.merge.Conflict;

/**
 * Sharing the workspace with another copy, on request only, without Swing. For the event thread
 * only; what is slow runs in the background and can be stopped.
 */
public final class SharingModel extends Observed {
  private final ShareOutside outside;
  private final Latest looking;
  private ShareStage stage = ShareStage.LOOKING;
  private Optional<ShareState> state = Optional.empty();
  private Optional<Progressing> running = Optional.empty();
  private Progressing.Step step = new Progressing.Step("", 0, 0);
  private List<Conflict> conflicts = List.of();
  private final Map<Conflict, Choice> choices = new LinkedHashMap<>();
  private Optional<Conflict> current = Optional.empty();
  private Came came = Came.NOTHING;
  private String trouble = "";

  /** Sharing of a workspace. */
  public SharingModel(ShareOutside outside) {
    this.outside = outside;
    this.looking = new Latest(outside.history().background());
  }

  /** How far it is. */
  public ShareStage stage() {
    return stage;
  }

  /** With what the workspace is shared, once that has been looked at. */
  Optional<ShareState> state() {
    return state;
  }

  /** How far the work under way is. */
  Progressing.Step step() {
    return step;
  }

  /** What both copies changed, in the order of the files. */
  public List<Conflict> conflicts() {
    return conflicts;
  }

  /** What was chosen for a part; empty while nothing is. */
  Optional<Choice> choice(Conflict conflict) {
    return Optional.ofNullable(choices.get(conflict));
  }

  /** The part that is looked at. */
  Optional<Conflict> current() {
    return current;
  }

  /** What came of the last pull or push. */
  public Came came() {
    return came;
  }

  /** What is wrong and how to go on; empty while nothing is. */
  public String trouble() {
    return trouble;
  }

  /** Finds out anew with what the workspace is shared. */
  public void look() {
    if (stage == ShareStage.RUNNING || stage == ShareStage.SETTLING) {
      return;
    }
    looking.run(
        "Looking with what this is shared",
        () -> Tried.of(() -> ShareState.of(outside.history().folders())),
        tried -> tried.told(this::take, this::failed));
  }

  private void take(Optional<ShareState> found) {
    if (stage != ShareStage.RUNNING && stage != ShareStage.SETTLING) {
      state = found;
      stage = found.isPresent() ? ShareStage.READY : ShareStage.NO_HISTORY;
      tell();
    }
  }

  private void failed(String why) {
    running = Optional.empty();
    trouble = why;
    stage = conflicts.isEmpty() ? ShareStage.READY : ShareStage.SETTLING;
    tell();
  }

  /** Says whose this copy is. */
  void role(Own role) {
    if (state.filter(now -> now.role() != role).isPresent()) {
      outside
          .history()
          .background()
          .run(
              "Writing whose copy this is",
              () -> Tried.of(() -> writeRole(role)),
              tried -> tried.told(done -> look(), this::failed));
    }
  }

  private boolean writeRole(Own role) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(outside.history().folders()).orElseThrow()) {
      new CopyRole(role).writeTo(place.repository());
      return true;
    }
  }

  /** Takes what the other copy has; what both changed is then to be settled. */
  public void pull() {
    conflicts = List.of();
    choices.clear();
    begin((place, author, with, stage) -> pull(place, author, with, stage, Settlement.none()));
  }

  /** Sends what this copy has. */
  public void push() {
    begin(this::push);
  }

  /** Whether a choice was made for every part. */
  boolean isSettled() {
    return conflicts.stream().allMatch(choices::containsKey);
  }

  /** Looks at a part that both changed. */
  void look(Conflict conflict) {
    current = Optional.of(conflict);
    tell();
  }

  /** Chooses for the part that is looked at, and goes on to the next that is open. */
  public void choose(Choice choice) {
    if (current.isEmpty() || choice == Choice.BOTH && !current.get().mayBeBoth()) {
      return;
    }
    choices.put(current.get(), choice);
    int at = conflicts.indexOf(current.get());
    for (int i = 1; i < conflicts.size(); i++) {
      Conflict next = conflicts.get((at + i) % conflicts.size());
      if (!choices.containsKey(next)) {
        current = Optional.of(next);
        break;
      }
    }
    tell();
  }

  /** Merges by what was chosen; without effect while something is open. */
  public void settle() {
    if (stage == ShareStage.SETTLING && isSettled()) {
      Settlement settlement = Settlement.of(choices);
      begin((place, author, with, stage) -> pull(place, author, with, stage, settlement));
    }
  }

  /** Leaves the choosing for now; no file has been changed. */
  public void leave() {
    conflicts = List.of();
    choices.clear();
    current = Optional.empty();
    trouble = "";
    stage = ShareStage.READY;
    came = Came.NOTHING;
    tell();
    look();
  }

  /** Stops the work under way as soon as nothing is half done. */
  public void stop() {
    running.ifPresent(Progressing::stop);
  }

  /** Work with the other copy, off the event thread. */
  private interface Work {
    Came with(HistoryFolder place, Author author, Optional<String> with, Progressing stage)
        throws IOException;
  }

  private void begin(Work work) {
    if (stage == ShareStage.RUNNING || state.isEmpty()) {
      return;
    }
    Optional<String> with =
        state.get().with().isPresent() ? Optional.empty() : outside.address().ask();
    if (state.get().with().isEmpty() && with.isEmpty()) {
      return;
    }
    Optional<Author> author = outside.history().who().of(state.get().recorder());
    if (author.isEmpty()) {
      return;
    }
    Progressing progress = new Progressing(outside.history().event(), this::at);
    running = Optional.of(progress);
    step = new Progressing.Step("Looking at the other copy", 0, 0);
    trouble = "";
    came = Came.NOTHING;
    stage = ShareStage.RUNNING;
    tell();
    outside
        .history()
        .background()
        .run(
            "Sharing",
            () -> Tried.of(() -> inHistory(work, author.get(), with, progress)),
            tried -> tried.told(this::done, this::failed),
            () -> failed("That did not work; nothing is half done."));
  }

  private Came inHistory(Work work, Author author, Optional<String> with, Progressing progress)
      throws IOException {
    outside.history().guard().begins("sharing");
    try (HistoryFolder place = HistoryFolder.of(outside.history().folders()).orElseThrow()) {
      return work.with(place, author, with.map(this::address), progress);
    }
  }

  /** An address; one that is a folder is seen from the workspace. */
  private String address(String typed) {
    return isFolder(typed)
        ? outside.history().folders().root().resolve(typed).normalize().toString()
        : typed;
  }

  /** An address in few words: of a folder its name. */
  static String shortened(String address) {
    String plain = address.replace('\\', '/').replaceFirst("/+$", "");
    return isFolder(address)
        ? "the folder " + plain.substring(plain.lastIndexOf('/') + 1)
        : address;
  }

  private static boolean isFolder(String address) {
    return !address.contains(":") || address.matches("[A-Za-z]:[\\\\/].*");
  }

  private Came pull(
      HistoryFolder place,
      Author author,
      Optional<String> with,
      Progressing stage,
      Settlement settlement)
      throws IOException {
    PullWish wish = new PullWish(author, settlement, with, false);
    PullOutcome outcome =
        new Sharing(place, outside.connections().apply(outside.passwords(), stage)).pull(wish);
    return Came.of(outcome);
  }

  private Came push(HistoryFolder place, Author author, Optional<String> with, Progressing stage)
      throws IOException {
    boolean make = with.filter(SharingModel::isFolder).isPresent();
    Sending sending = new Sending(place, outside.connections().apply(outside.passwords(), stage));
    return Came.of(sending.push(author, with, make));
  }

  private void at(Progressing.Step now) {
    if (stage == ShareStage.RUNNING) {
      step = now;
      tell();
    }
  }

  private void done(Came outcome) {
    running = Optional.empty();
    came = outcome;
    conflicts = outcome.conflicts();
    if (conflicts.isEmpty()) {
      choices.clear();
    }
    current = conflicts.stream().filter(each -> !choices.containsKey(each)).findFirst();
    stage = conflicts.isEmpty() ? ShareStage.READY : ShareStage.SETTLING;
    tell();
    if (!outcome.files().isEmpty()) {
      outside.history().changed().run();
    }
    look();
  }
}
