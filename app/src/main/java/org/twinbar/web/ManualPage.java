package org.twinbar.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * A page of the manual, from Markdown as docs has it. Links between files become links between
 * pages; what the program has no page for stays as words.
 *
 * @param path of the file below docs, without its ending
 * @param html all below the title
 * @param sections that it is parted into
 */
public record ManualPage(String path, String title, String html, List<Section> sections) {

    private static final String FIRST = "README";
    private static final List<Extension> TABLES = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(TABLES).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder()
            .extensions(TABLES)
            .escapeHtml(true)
            .sanitizeUrls(true)
            .attributeProviderFactory(context -> (AttributeProvider) ManualPage::attributes)
            .build();

    public ManualPage {
        sections = List.copyOf(sections);
    }

    /** A part with a heading of its own. */
    public record Section(String anchor, String title) {}

    /** @param exists whether there is a page of this path */
    static ManualPage of(String path, String markdown, Predicate<String> exists) {
        Node document = PARSER.parse(markdown);
        String title = path;
        Node first = document.getFirstChild();
        if (first instanceof Heading heading) {
            title = words(heading);
            heading.unlink();
        }
        List<Section> sections = new ArrayList<>();
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Heading heading && heading.getLevel() == 2) {
                sections.add(new Section(anchor(heading), words(heading)));
            }
        }
        document.accept(new Relinked(path, exists));
        // A table may be wider than a phone, and must then be moved by itself.
        String html = RENDERER.render(document)
                .replace(
                        "<table>",
                        "<div class=\"wide\" role=\"region\" aria-label=\"Table\" tabindex=\"0\"><table>")
                .replace("</table>", "</table></div>");
        return new ManualPage(path, title, html, sections);
    }

    public boolean isFirst() {
        return path.equals(FIRST);
    }

    private static void attributes(Node node, String tag, Map<String, String> attributes) {
        if (node instanceof Heading heading) {
            attributes.put("id", anchor(heading));
        } else if (tag.equals("pre")) {
            attributes.put("tabindex", "0");
            attributes.put("role", "region");
            attributes.put("aria-label", "What is typed and printed");
        } else if (node instanceof Image) {
            attributes.put("loading", "lazy");
        }
    }

    private static String anchor(Heading heading) {
        return words(heading)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N} -]", "")
                .replace(' ', '-');
    }

    private static String words(Node node) {
        StringBuilder words = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }
        });
        return words.toString();
    }

    /** Leads links to where pages and pictures are. */
    private static final class Relinked extends AbstractVisitor {

        private final String folder;
        private final Predicate<String> exists;

        Relinked(String path, Predicate<String> exists) {
            this.folder = path.substring(0, path.lastIndexOf('/') + 1);
            this.exists = exists;
        }

        @Override
        public void visit(Link link) {
            visitChildren(link);
            String to = link.getDestination();
            if (to.startsWith("#") || to.startsWith("http:") || to.startsWith("https:")) {
                return;
            }
            int hash = to.indexOf('#');
            String file = resolved(hash < 0 ? to : to.substring(0, hash));
            Optional<String> page = page(file);
            if (page.isPresent()) {
                link.setDestination(page.get() + (hash < 0 ? "" : to.substring(hash)));
            } else {
                // The children stand where the link stood.
                Node next = link.getFirstChild();
                while (next != null) {
                    Node child = next;
                    next = child.getNext();
                    link.insertBefore(child);
                }
                link.unlink();
            }
        }

        @Override
        public void visit(Image image) {
            String file = resolved(image.getDestination());
            image.setDestination("/manual/pictures/" + file.substring(file.lastIndexOf('/') + 1));
            visitChildren(image);
        }

        private Optional<String> page(String file) {
            String path = file.endsWith(".md")
                    ? file.substring(0, file.length() - ".md".length())
                    : file + "/README";
            if (!exists.test(path)) {
                return Optional.empty();
            }
            String place = path.equals(FIRST)
                    ? ""
                    : "/" + path.replaceFirst("^manual/", "").replaceFirst("/README$", "");
            return Optional.of("/manual" + place);
        }

        /** Returns a path below docs from one that is relative to this page's folder. */
        private String resolved(String relative) {
            List<String> parts = new ArrayList<>();
            for (String part : (folder + relative).split("/", -1)) {
                if (part.equals("..") && !parts.isEmpty()) {
                    parts.remove(parts.size() - 1);
                } else if (!part.isEmpty() && !part.equals(".")) {
                    parts.add(part);
                }
            }
            return String.join("/", parts);
        }
    }
}
