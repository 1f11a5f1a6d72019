package limberboard.upkeep.shopping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;

/** A small workspace written for a test: materials and jobs as they are told, and one boat. */
final class SmallStore {
  static final LocalDate TODAY = LocalDate.of(2026, 3, 1);

  private final Path root;
  private String water = "salt";

  SmallStore(Path root) throws IOException {
    this.root = root;
    write(
        "articles/models/dinghy.md",
        """
        ---
        title: Dinghy
        built: 2010/..
        drawing: {profile: ../pictures/a.svg, deck: ../pictures/a.svg}
        zones: [{id: mast, title: Mast, profile: "1,1 2,1 2,2"}]
        equipment:
          - id: mast
            title: Mast
            choices: [{id: mast-carbon, title: Carbon mast, default: 2010/.., made-of: [carbon]}]
          - id: drive
            title: Drive
            choices: [{id: saildrive, title: Saildrive, default: 2010/.., made-of: [aluminium-under-water]}]
          - id: battery
            title: Battery
            choices: [{id: battery-lithium, title: Lithium battery, default: 2010/.., made-of: [lithium]}]
        ---
        """);
    write(
        "articles/pictures/a.svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"/>");
  }

  private void write(String file, String text) throws IOException {
    Path path = root.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  SmallStore water(String word) {
    water = word;
    return this;
  }

  SmallStore material(String id, String keys) throws IOException {
    write(
        "articles/materials/" + id + ".md",
        "---\ntitle: "
            + id.substring(0, 1).toUpperCase()
            + id.substring(1)
            + "\n"
            + keys
            + "\n---\n");
    return this;
  }

  SmallStore job(String id, String materials) throws IOException {
    return job(id, materials, "tools: []");
  }

  SmallStore job(String id, String materials, String more) throws IOException {
    write(
        "articles/procedures/" + id + ".md",
        "---\ntitle: Job "
            + id
            + "\nsystem: hull\nwork: mend\nskill: owner\nminutes: 10\nmaterials: ["
            + materials
            + "]\n"
            + more
            + "\n---\n");
    return this;
  }

  SmallStore stock(String lines) throws IOException {
    write("boats/avocet/stock.csv", "material,left,opened,best-before,note\n" + lines);
    return this;
  }

  Workspace workspace() throws IOException {
    write(
        "boats/avocet/boat.yaml",
        "name: Avocet\nmodel: dinghy\nhull: 1\nbuilt: 2015\nwater: " + water + "\n");
    return new WorkspaceReader(new WorkspaceFolders(root)).read();
  }

  /** The list for jobs, each on its day: {@code "bed 2026-04-01"}. */
  ShoppingList list(String... jobs) throws IOException {
    Workspace workspace = workspace();
    Boat boat = workspace.boat("avocet").orElseThrow();
    List<Job> chosen =
        List.of(jobs).stream()
            .map(text -> text.split(" "))
            .map(
                parts ->
                    new Job(
                        workspace.library().procedure(parts[0]).orElseThrow(),
                        1,
                        LocalDate.parse(parts[1])))
            .toList();
    return ShoppingList.of(
        chosen, new Fitting(boat, TODAY), workspace.stock(boat), workspace.library());
  }
}
