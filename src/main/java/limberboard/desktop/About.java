package limberboard.desktop;

import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;

/**
 * Which program this is, and where its files are.
 *
 * @param version the program's version
 * @param workspace the workspace that is open
 * @param own the person's folders
 */
record About(String version, WorkspaceFolders workspace, UserFolders own) {

  /** The version that was built, as its archive has it. */
  static String builtVersion() {
    String version = About.class.getPackage().getImplementationVersion();
    return version == null ? "built from its sources" : "version " + version;
  }

  /** What a person reads. */
  String text() {
    return String.join(
        "\n",
        "Limberboard, " + version,
        "",
        "Licence: Apache-2.0. Those of the libraries it uses lie in its folder, under licences.",
        "Java: " + System.getProperty("java.version") + ", " + System.getProperty("java.vendor"),
        "",
        "Workspace: " + workspace.root(),
        "Settings: " + own.config(),
        "Traces not finished, and the file of failures: " + own.state());
  }
}
