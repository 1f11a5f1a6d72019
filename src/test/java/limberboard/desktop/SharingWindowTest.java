package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.desktop.workspace.WorkspacePlace;
import limberboard.desktop.workspace.share.ShareStage;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.CopyRole;
import limberboard.history.GitRun;
import limberboard.history.HistoryFolder;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Own;
import limberboard.sharing.Asking;
import limberboard.sharing.Connection;
import limberboard.sharing.Copying;
import limberboard.sharing.HowFar;
import limberboard.sharing.Sending;
import org.junit.jupiter.api.Test;

/** Two copies merged through the window by keyboard alone, and read by git afterwards. */
class SharingWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;
  private static final Author ADA = new Author("Ada", "ada@example.org");
  private static final Author BOB = new Author("Bob", "bob@example.org");
  private static final String VENT = "articles/procedures/seal-vent.md";
  private static final String HOSE = "articles/procedures/tighten-hose.md";

  private WorkspacePlace place() {
    return (WorkspacePlace) desk().place("workspace");
  }

  private ShareStage stage() {
    return place().sharing().stage();
  }

  private static Connection connection() {
    return new Connection(
        Asking.nobody(), java.util.List.of("ssh"), java.util.List.of(), HowFar.silent());
  }

  private static boolean hasFocus(String name) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && name.equals(owner.getName());
  }

  private void untilFocused(String name) {
    window.until("the focus is on " + name, () -> hasFocus(name));
  }

  private void openSharing() {
    window.act(() -> desk().window().go(place()));
    window.act(() -> place().look("sharing"));
    untilFocused("share-pull");
  }

  private static void change(Path file, String old, String now) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(old);
    Files.writeString(file, text.replace(old, now));
  }

  /** Begins the history; Git's settings say who records. */
  private static void begin(WorkspaceFolders folders) throws IOException {
    Beginning.begin(folders, ADA);
    GitRun git = new GitRun(folders.root());
    git.run("config", "user.name", ADA.name()).good();
    git.run("config", "user.email", ADA.mail()).good();
  }

  /** The dealer's copy of this workspace, with a remote between them. */
  private WorkspaceFolders dealer(Path remote) throws IOException {
    WorkspaceFolders here = window.folders();
    begin(here);
    try (HistoryFolder place = HistoryFolder.of(here).orElseThrow()) {
      new Sending(place, connection()).push(ADA, Optional.of(remote.toString()), true);
    }
    Path target = remote.resolveSibling("dealer");
    new Copying(connection()).copy(remote.toString(), target, new CopyRole(Own.DEALER));
    return new WorkspaceFolders(target);
  }

  private static void sendFrom(WorkspaceFolders copy) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(copy).orElseThrow()) {
      new Sending(place, connection()).push(BOB, Optional.empty(), false);
    }
  }

  private static void hasNoMarks(WorkspaceFolders folders) throws IOException {
    try (Stream<Path> files = Files.walk(folders.articles())) {
      for (Path file : files.filter(each -> each.toString().endsWith(".md")).toList()) {
        assertThat(Files.readString(file)).doesNotContain("<<<<", ">>>>");
      }
    }
  }

  @Test
  void conflictingAndOtherEditsAreMergedByKeyboardAndGitReadsThem() throws IOException {
    Path remote = Files.createTempDirectory("remote").resolve("yard.git");
    WorkspaceFolders dealer = dealer(remote);
    String vent = Files.readString(dealer.root().resolve(VENT));
    String title = vent.lines().filter(line -> line.startsWith("title:")).findFirst().orElseThrow();
    change(dealer.root().resolve(VENT), title, title + ", the dealer’s way");
    Files.writeString(
        dealer.root().resolve(VENT),
        Files.readString(dealer.root().resolve(VENT)) + "\nThe dealer adds this.\n");
    change(dealer.root().resolve(HOSE), "title: ", "title: Dealer: ".replace("Dealer: ", "Well "));
    sendFrom(dealer);
    change(window.folders().root().resolve(VENT), title, title + ", the yard’s way");
    Path gasket = window.folders().articles().resolve("procedures/replace-gasket.md");
    Files.writeString(gasket, Files.readString(gasket) + "\nThe yard adds this.\n");

    openSharing();
    window.press(KeyEvent.VK_ENTER);
    window.until("it is to be settled", () -> stage() == ShareStage.SETTLING);
    untilFocused("merge-parts");
    assertThat(window.ask(() -> place().sharing().conflicts())).hasSize(1);
    assertThat(Files.readString(window.folders().root().resolve(VENT)))
        .contains("the yard’s way")
        .doesNotContain("The dealer adds this.");
    window.press(KeyEvent.VK_2);
    window.press(KeyEvent.VK_ENTER, CTRL);
    window.until(
        "it is merged",
        () -> stage() == ShareStage.READY && !place().sharing().came().files().isEmpty());

    String merged = Files.readString(window.folders().root().resolve(VENT));
    assertThat(merged)
        .contains("the dealer’s way")
        .contains("The dealer adds this.")
        .doesNotContain("the yard’s way");
    assertThat(Files.readString(gasket)).contains("The yard adds this.");
    assertThat(Files.readString(window.folders().root().resolve(HOSE))).contains("title: Well ");
    hasNoMarks(window.folders());

    openPush();
    window.until(
        "it is sent", () -> place().sharing().came().lines().toString().contains("Sent: "));
    GitRun git = new GitRun(window.folders().root());
    assertThat(git.run("status", "--porcelain", "articles", "boats").good()).isEmpty();
    git.run("fsck", "--strict").good();
    assertThat(git.run("log", "-1", "--format=%s|%an|%p").good())
        .startsWith("Merge what others changed|Ada|")
        .matches(said -> said.strip().split("\\|")[2].split(" ").length == 2, "two versions met");
    assertThat(new GitRun(remote).run("rev-parse", "main").good())
        .isEqualTo(git.run("rev-parse", "HEAD").good());
    assertThat(git.run("show", "HEAD:" + VENT).good()).contains("the dealer’s way");
  }

  private void openPush() {
    window.focus("share-push");
    window.press(KeyEvent.VK_ENTER);
  }

  @Test
  void itIsAskedWithWhatToShareAndAFolderIsMade() throws IOException {
    Path remote = Files.createTempDirectory("remote").resolve("new.git");
    begin(window.folders());
    openSharing();
    openPush();
    window.until("it asks with what", () -> window.shows("share-address"));
    untilFocused("share-address");
    window.type(remote.toString());
    window.press(KeyEvent.VK_ENTER);
    window.until(
        "it is sent",
        () -> place().sharing().came().lines().toString().contains("Sent: 1 version"));
    assertThat(new GitRun(remote).run("log", "--format=%s", "main").good())
        .contains("Begin the history");
  }

  @Test
  void whatCannotBeReachedIsSaidWithTheWayOn() throws IOException {
    Path remote = Files.createTempDirectory("remote").resolve("yard.git");
    dealer(remote);
    Files.move(remote, remote.resolveSibling("moved.git"));
    openSharing();
    window.press(KeyEvent.VK_ENTER);
    window.until("it is said", () -> !place().sharing().trouble().isEmpty());
    assertThat(window.ask(this::stage)).isEqualTo(ShareStage.READY);
    untilFocused("share-pull");
  }
}
