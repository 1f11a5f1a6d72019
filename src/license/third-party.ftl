<#-- Makes docs/third-party.md: one row for each library that the program carries. -->
# Libraries

Limberboard itself is under the Apache License 2.0. It carries these libraries; this page is made by the build from its
dependencies. The runnable folder holds their licences and notices, each under `licences/` by the library's name.

| library | version | licence |
| --- | --- | --- |
<#list dependencyMap as entry>
<#assign project = entry.getKey()>
| [${project.artifactId}](${project.url!"https://central.sonatype.com/artifact/" + project.groupId + "/" + project.artifactId}) | ${project.version} | <#list entry.getValue() as licence>${licence}<#sep>; </#list> |
</#list>

The window's typeface, Inter, lies in `flatlaf-fonts-inter` and is under the SIL Open Font License 1.1. Where a library is under
more than one licence, the row names all of them and one may be chosen.
