package haftline.sheet.html;

import haftline.drawing.Drawing;
import haftline.measure.NumberText;
import haftline.sheet.page.Field;
import haftline.write.XmlText;
import haftline.write.svg.SvgOptions;
import haftline.write.svg.SvgWriter;

/**
 * An HTML document under construction, well-formed as XML too. Every text that comes from outside
 * goes through {@link #text}.
 */
final class Page {
    private static final String STYLE =
            """
            * { box-sizing: border-box; }
            html { background: #fff; color: #000; }
            body { margin: 0 auto; padding: 5mm; max-width: 200mm; line-height: 1.28;
              font-family: "Liberation Sans", Arial, Helvetica, sans-serif; font-size: 12pt; }
            header { display: flex; justify-content: space-between; align-items: flex-start;
              border-top: 0.7mm solid; border-bottom: 0.25mm solid; padding: 1.5mm 0 1mm; }
            header { flex-wrap: wrap; } header > div { flex: 1 1 55mm; }
            h1 { margin: 0; font-size: 22pt; line-height: 1.1; overflow-wrap: anywhere; }
            h1.long { font-size: 14pt; }
            h2 { margin: 0 0 0.1em; padding-top: 0.15em; border-top: 0.6mm solid; font-size: 0.93em;
              text-transform: uppercase; }
            p { margin: 0.15em 0; overflow-wrap: anywhere; }
            svg { max-width: 100%; height: auto; }
            figure { margin: 1mm 0; text-align: center; }
            .kind { font-weight: bold; text-transform: uppercase; font-size: 9pt; }
            .small { font-size: 0.78em; line-height: 1.25; }
            .columns { display: grid; grid-template-columns: 1fr 1fr; column-gap: 8mm; }
            .columns > div { min-width: 0; }
            section { margin-bottom: 0.5em; }
            table { width: 100%; border-collapse: collapse; }
            th { font-weight: normal; font-size: 0.72em; text-align: right; vertical-align: bottom;
              line-height: 1.1; }
            td, th { padding: 0.06em 0 0.06em 0.35em; border-bottom: 0.25mm solid; }
            td { text-align: right; white-space: nowrap; font-size: 1.05em; vertical-align: middle; }
            td.words, th.words { padding-left: 0; text-align: left; white-space: normal; overflow-wrap: anywhere; }
            td.words { font-size: 0.84em; line-height: 1.2; }
            td.main { font-weight: bold; font-size: 1.3em; }
            td.label { overflow-wrap: normal; width: 25%; }
            td.note { overflow-wrap: break-word; width: 45%; padding-left: 1.5mm; }
            td.number { width: 1.6em; white-space: nowrap; }
            td.box div { width: 19mm; height: 7mm; border: 0.4mm solid; margin-left: auto; }
            td.letter { font-weight: bold; text-align: left; width: 1.6em; }
            .page { break-before: page; }
            ol, ul { margin: 0.1em 0; padding-left: 1.6em; overflow-wrap: anywhere; }
            ul.plain { list-style: none; padding-left: 0; }
            li { margin: 0.1em 0; }
            .stop { border: 0.7mm solid; padding: 2mm; margin: 1.5mm 0; }
            .stop strong { display: block; text-align: center; font-size: 20pt; }
            footer { border-top: 0.25mm solid; margin-top: 1mm; padding-top: 0.5mm; font-size: 7.5pt; }
            @media (max-width: 170mm) { .columns { display: block; } }
            """;

    private final StringBuilder out = new StringBuilder();

    private Page() {}

    /** Begins a document. */
    static Page titled(String title, Field field, String printStyle) {
        Page page = new Page();
        page.raw(
                        "<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n")
                .raw("<meta charset=\"utf-8\" />\n")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />\n")
                .raw("<title>")
                .text(title)
                .raw("</title>\n<style>\n")
                .raw(STYLE)
                .raw("@page { size: ")
                .raw(NumberText.upTo(field.paper().widthMm(), 2) + "mm ")
                .raw(NumberText.upTo(field.paper().heightMm(), 2) + "mm; margin: 10mm; }\n")
                .raw(
                        "@media print { body { padding: 0; max-width: none; } .columns { display: grid; }\n")
                .raw(printStyle)
                .raw("}\n</style>\n</head>\n<body>\n");
        return page;
    }

    /** Mark-up of this program's own. */
    Page raw(String markup) {
        out.append(markup);
        return this;
    }

    /** A text, made harmless. */
    Page text(String text) {
        out.append(XmlText.escaped(text));
        return this;
    }

    Page element(String tag, String text) {
        return raw("<" + tag + ">").text(text).raw("</" + tag + ">\n");
    }

    Page element(String tag, String styleClass, String text) {
        return raw("<" + tag + " class=\"" + styleClass + "\">").text(text).raw("</" + tag + ">\n");
    }

    /** A drawing in the page itself; two of them may hold the same layers, so none has an id. */
    Page drawing(Drawing drawing) {
        String svg = new SvgWriter(new SvgOptions(0.5, 0.1)).write(drawing);
        return raw(svg.substring(svg.indexOf("<svg")).replace("<g id=", "<g class="));
    }

    String end() {
        return out.append("</body>\n</html>\n").toString();
    }
}
