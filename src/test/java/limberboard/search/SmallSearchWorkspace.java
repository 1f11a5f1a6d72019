package limberboard.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;

/** A workspace of a few pages for tests of search. */
final class SmallSearchWorkspace {
  private final WorkspaceFolders folders;

  SmallSearchWorkspace(Path root) {
    folders = new WorkspaceFolders(root);
    folder("articles");
  }

  /** One with a page of most kinds. */
  static SmallSearchWorkspace filled(Path root) {
    SmallSearchWorkspace workspace = new SmallSearchWorkspace(root);
    workspace.page(
        "symptoms/wet-bunk",
        """
        title: Water in the bow cabin
        summary: Damp bedding or a puddle at the very front.
        said-as: [wet bunk cushions, puddle below the bed]
        zones: [bow-cabin]
        causes:
          - id: hatch
            title: The forehatch gasket is flat
            about: Rain runs past a gasket that has lost its spring.
            weight: 5
            mend: renew-hatch-gasket
          - id: bolt
            title: A cleat bolt leaks
            weight: 2
            mend: bed-cleat
        checks:
          - id: hose
            ask: Does water run in under the hose?
            how: Hose the closed hatch.
            minutes: 5
            answers: [runs-in, stays-dry]
            finds: {runs-in: {hatch: usually}}
            said-as: {runs-in: [it trickles in at the coaming]}
        """,
        "Dry the cushions first.");
    workspace.page(
        "procedures/renew-hatch-gasket",
        """
        title: Renew the hatch gasket
        system: deck
        work: renew
        skill: owner
        minutes: 40
        fits: {built: ../2015}
        materials: [{use: rubber-strip, pieces: 1}]
        tools: [scraper]
        """,
        """
        ## Take out the old gasket

        1. Pull the strip out of its groove.
        2. Clean with a solvent.

        | width | strip |
        | --- | --- |
        | 12 mm | narrow |
        """);
    workspace.page(
        "procedures/bed-cleat",
        "title: Bed a mooring cleat\nsystem: deck\nwork: mend\nskill: owner\nminutes: 60\n",
        "Undo the nuts, lift the cleat, and bed it in fresh sealant.");
    workspace.page(
        "materials/rubber-strip",
        "title: Rubber strip\ngroup: seal\nunit: piece\n",
        "Closed-cell strip with glue on one side.");
    workspace.page("materials/scraper", "title: Blunt scraper\ngroup: tool\n", "Made of plastic.");
    workspace.page(
        "cautions/solvent-fumes",
        "title: Solvent fumes\ndanger: Fumes make you giddy.\ndo: [Open a hatch.]\n",
        "Some burn.");
    workspace.page(
        "topics/how-hydraulics-work",
        "title: How hydraulics work\n",
        "Hydraulic oil carries the pressure from the pump to the cylinder.");
    return workspace;
  }

  WorkspaceFolders folders() {
    return folders;
  }

  /** Writes a page. */
  void page(String path, String header, String body) {
    write("articles/" + path + ".md", "---\n" + header.strip() + "\n---\n\n" + body + "\n");
  }

  /** Writes a topic. */
  void topic(String id, String title, String body) {
    page("topics/" + id, "title: " + title, body);
  }

  void remove(String path) {
    try {
      Files.delete(folders.root().resolve("articles/" + path + ".md"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void synonyms(String... lines) {
    write("index/words/" + SearchWords.SYNONYMS, String.join("\n", lines));
  }

  void spellings(String... lines) {
    write("index/words/" + SearchWords.SPELLINGS, String.join("\n", lines));
  }

  void write(String file, String text) {
    try {
      Path path = folders.root().resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void folder(String name) {
    try {
      Files.createDirectories(folders.root().resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Library library() throws IOException {
    return new LibraryReader(folders).read();
  }

  /** Opens the index and brings it up to date. */
  SearchIndex index() throws IOException {
    SearchIndex index = SearchIndex.open(folders);
    index.update(library());
    return index;
  }

  /** The files of the index on disk. */
  List<Path> indexFiles() throws IOException {
    try (var files = Files.list(folders.searchIndex())) {
      return files
          .filter(file -> !file.getFileName().toString().equals("write.lock"))
          .sorted()
          .toList();
    }
  }

  /** Ids of the hits for a text. */
  static List<String> ids(SearchIndex index, String text) throws IOException {
    return ids(index.find(SearchQuery.of(text)));
  }

  static List<String> ids(SearchResults results) {
    return results.hits().stream().map(Hit::id).toList();
  }
}
