package limberboard.desktop.base;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.Library;

/**
 * What the whole window knows: the workspace as last read, and which boat is chosen. For the event
 * thread only.
 */
public final class Session extends Observed {
  private final Clock clock;
  private Workspace workspace = new Workspace(Library.empty(), List.of(), List.of(), List.of());
  private boolean read;
  private LocalDate told;
  private Optional<String> chosen;
  private Optional<Boat> boat = Optional.empty();

  /**
   * A session before anything has been read.
   *
   * @param clock says what day it is
   * @param chosen id of the boat chosen last time
   */
  public Session(Clock clock, Optional<String> chosen) {
    this.clock = clock;
    this.chosen = chosen;
    this.told = today();
  }

  /** Whether the workspace has been read. */
  public boolean isRead() {
    return read;
  }

  /** The workspace as last read; without pages before that. */
  public Workspace workspace() {
    return workspace;
  }

  /** The library as last read. */
  public Library library() {
    return workspace.library();
  }

  /** The day. */
  public LocalDate today() {
    return LocalDate.now(clock);
  }

  /**
   * Takes a newly read workspace; the boat chosen before stays chosen if it is still there. When
   * nothing in it has changed, nobody is told and the former snapshot stays.
   */
  public void replace(Workspace newWorkspace) {
    if (read && told.equals(today()) && newWorkspace.equals(workspace)) {
      return;
    }
    workspace = newWorkspace.equals(workspace) ? workspace : newWorkspace;
    read = true;
    if (chosen.isEmpty() && workspace.boats().size() == 1) {
      chosen = Optional.of(workspace.boats().get(0).id());
    }
    boat = chosen.flatMap(workspace::boat);
    changed();
  }

  /** The chosen boat. */
  public Optional<Boat> boat() {
    return boat;
  }

  /** The id of the chosen boat, also while its files are not there. */
  public Optional<String> chosen() {
    return chosen;
  }

  /** The chosen boat today. */
  public Optional<Fitting> fitting() {
    return boat.map(known -> new Fitting(known, today()));
  }

  /** Chooses a boat by id, or none; the id may be that of a boat that nobody has entered. */
  public void choose(Optional<String> id) {
    if (!id.equals(chosen)) {
      chosen = id;
      boat = chosen.flatMap(workspace::boat);
      changed();
    }
  }

  private void changed() {
    told = today();
    tell();
  }
}
