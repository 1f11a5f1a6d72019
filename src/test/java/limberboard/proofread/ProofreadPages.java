package limberboard.proofread;

import java.nio.file.Path;
import java.util.List;
import limberboard.library.Library;
import limberboard.library.TestWorkspace;
import limberboard.proofread.file.TradeWordsFile;
import limberboard.proofread.rule.PageRemark;

/** A small workspace with pages that break a rule, or come close without breaking it. */
final class ProofreadPages {
  private final TestWorkspace workspace;

  ProofreadPages(Path folder) {
    workspace = new TestWorkspace(folder);
    tool("torque-wrench", "Torque wrench, 5 to 60 N·m", "click wrench");
    tool("drill-set", "Drill and bits", "power drill");
    material(
        "glue", "Neoprene glue", "adhesive", "ml", "keep-off: [{what: acrylic, why: it crazes}]");
    material("polish", "Paste polish", "cleaner", "g", "");
    material("strip", "Gasket strip", "seal", "m", "");
    caution("petrol-vapour", "Petrol vapour");
    caution("sanding-dust", "Sanding dust");
    words(
        """
        cautions:
          - {words: [petrol, carburettor], carry: [petrol-vapour], unless: [smell of petrol]}
        needs:
          - {words: [N·m], tools: [torque-wrench], unless: [by hand]}
          - {words: [crawl in], access: [berth-lifted]}
        uses:
          - {thing: drill-set, words: [countersink]}
        orders:
          - {first: [shut the fuel cock], then: [part … hose], why: fuel runs out}
          - {first: [bottle away], then: [heat gun on], with: [alcohol], always: true, why: it burns}
        figures:
          - {about: how long a hatch is hosed, words: [hose … hatch], measure: time, most: 60}
        names:
          - {thing: polish, words: [polishing paste]}
        common: [paste]
        actions: [wipe, lay, press, hold, take, look, write]
        """);
  }

  TestWorkspace workspace() {
    return workspace;
  }

  void words(String yaml) {
    workspace.write("articles/" + TradeWordsFile.NAME, yaml);
  }

  void tool(String id, String title, String said) {
    workspace.write(
        "articles/materials/" + id + ".md",
        "---\ntitle: \"" + title + "\"\nsaid-as: [" + said + "]\ngroup: tool\n---\n");
  }

  void material(String id, String title, String group, String unit, String more) {
    workspace.write(
        "articles/materials/" + id + ".md",
        "---\ntitle: " + title + "\ngroup: " + group + "\nunit: " + unit + "\n" + more + "\n---\n");
  }

  void caution(String id, String title) {
    workspace.write(
        "articles/cautions/" + id + ".md",
        "---\ntitle: " + title + "\ndanger: It hurts.\ngrave: true\ndo: [Stay away.]\n---\n");
  }

  /** Writes a procedure with these further lines in its header. */
  ProofreadPages work(String id, String header, String body) {
    workspace.write(
        "articles/procedures/" + id + ".md",
        ("---\ntitle: Do the work\nsystem: deck\nskill: owner\n" + header)
            + ((header.contains("work:") ? "" : "work: mend\n")
                + (header.contains("minutes:") ? "" : "minutes: 60\n")
                + "---\n"
                + body
                + "\n"));
    return this;
  }

  Proofreader.Proof proof(String id) {
    Library library = workspace.library();
    TradeWordsFile words = TradeWordsFile.read(workspace.folders(), library);
    return new Proofreader(workspace.folders(), library, words.words())
        .read(library.page(id).orElseThrow());
  }

  /** The line and key of each problem of the file of words. */
  List<String> wordsProblems() {
    return TradeWordsFile.read(workspace.folders(), workspace.library()).problems().stream()
        .map(problem -> problem.line() + " " + problem.key())
        .toList();
  }

  /** What is found of one rule on a page: the line and what it is about. */
  List<String> found(String rule, String id) {
    return proof(id).open().stream()
        .filter(finding -> finding.rule().equals(rule))
        .map(ProofreadPages::told)
        .toList();
  }

  private static String told(PageRemark finding) {
    return finding.line() + " " + finding.about();
  }
}
