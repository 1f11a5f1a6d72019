package limberboard.desktop.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.library.file.WorkspaceFolders;

/**
 * The small workspace with more ropes on the dinghy, a rope on sale, and work that makes one of
 * them anew. The length of one is not known.
 */
public final class RopedWorkspace {
  private static final String MORE =
      """
        - id: jib-sheets
          title: Jib sheets
          group: sheet
          count: 2
          add: {clew to winch: 6 m}
          construction: polyester-braid
          diameter: 6 mm
          ends: [knot, whipping]
        - id: jib-halyard
          title: Jib halyard
          group: halyard
          length: {I: 2}
          construction: polyester-braid
          diameter: 6 mm
          ends: [knot, whipping]
      """;

  private static final String ROPE =
      """
      ---
      title: Polyester rope 6 mm
      group: cordage
      unit: m
      rope: {construction: polyester-braid, diameter: 6 mm}
      packs: [{name: by the metre, holds: 1 m, cut-to-length: true}]
      ---
      Braided.
      """;

  private static final String WORK =
      """
      ---
      title: Renew the main halyard
      summary: A new halyard before the old one parts.
      system: rig
      work: renew
      skill: owner
      minutes: 30
      zones: [mast]
      materials:
        - use: polyester-rope-6mm
          cord: {length: 11 m}
          ropes: [main-halyard]
      interval: {every: P2Y, phase: ashore-mast-down}
      ---
      1. Sew the new one to the old and draw it through.
      """;

  private RopedWorkspace() {}

  /** A copy in an empty folder. */
  public static WorkspaceFolders copyTo(Path folder) {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    try {
      Path dinghy = model(folders);
      String page = Files.readString(dinghy);
      Files.writeString(dinghy, page.replace("access:\n", MORE + "access:\n"));
      Files.writeString(folders.articles().resolve("materials/polyester-rope-6mm.md"), ROPE);
      Files.writeString(folders.articles().resolve("procedures/renew-main-halyard.md"), WORK);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return folders;
  }

  /** From now on the dinghy's list has no jib sheets. */
  public static void dropJibSheets(WorkspaceFolders folders) {
    try {
      Path dinghy = model(folders);
      String page = Files.readString(dinghy);
      int from = page.indexOf("  - id: jib-sheets");
      int to = page.indexOf("  - id: jib-halyard");
      Files.writeString(dinghy, page.substring(0, from) + page.substring(to));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path model(WorkspaceFolders folders) {
    return folders.articles().resolve("models/dinghy.md");
  }
}
