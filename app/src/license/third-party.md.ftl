# What Twinbar carries of others

The program's jar holds these libraries, unchanged, under their own licences; where several are named,
one may be chosen. Twinbar itself is under the Apache License 2.0 (LICENSE). This page is made from the
build's dependencies by `./check --update`.

| library | version | licence |
|---|---|---|
<#list dependencyMap as entry>
<#assign library = entry.getKey()/>
| ${library.groupId}:${library.artifactId} | ${library.version} | <#list entry.getValue() as licence>${licence}<#sep>; </#list> |
</#list>
