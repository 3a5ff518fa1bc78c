package org.sunder.page;

import java.util.List;

/** Texts that run a script where markup is not kept apart from text; each would set window.run. At most 80 characters. */
final class Payloads {

    static final List<String> ALL = List.of(
            "<script>run=1</script>",
            "<SCRIPT>run=1</SCRIPT>",
            "<script src=//x.test/a.js></script>",
            "</script><script>run=1</script>",
            "<img src=x onerror=run=1>",
            "<img src=x onerror='run=1'>",
            "\"><img src=x onerror=run=1>",
            "'><img src=x onerror=run=1>",
            "<svg onload=run=1>",
            "<svg><script>run=1</script></svg>",
            "<svg/onload=run=1>",
            "<svg><animate onbegin=run=1 attributeName=x dur=1s>",
            "<body onload=run=1>",
            "<iframe srcdoc='<script>parent.run=1</script>'>",
            "<iframe src=javascript:parent.run=1>",
            "<a href=javascript:run=1>x</a>",
            "javascript:run=1",
            "<input autofocus onfocus=run=1>",
            "<details open ontoggle=run=1>",
            "<video><source onerror=run=1></video>",
            "<audio src=x onerror=run=1>",
            "<object data=javascript:run=1>",
            "<embed src=javascript:run=1>",
            "<form action=javascript:run=1><button>x</button></form>",
            "<marquee onstart=run=1>x</marquee>",
            "<style>@import 'javascript:run=1'</style>",
            "<link rel=stylesheet href=javascript:run=1>",
            "<meta http-equiv=refresh content='0;javascript:run=1'>",
            "<math><mtext><script>run=1</script></mtext></math>",
            "<template><script>run=1</script></template>",
            "<textarea></textarea><script>run=1</script>",
            "</textarea><script>run=1</script>",
            "</title><script>run=1</script>",
            "</style><script>run=1</script>",
            "</desc><script>run=1</script>",
            "</text></svg><script>run=1</script>",
            "]]><script>run=1</script>",
            "<!--><script>run=1</script>",
            "--><script>run=1</script>",
            "<![CDATA[<script>run=1</script>]]>",
            "&lt;script&gt;run=1&lt;/script&gt;",
            "&#60;script&#62;run=1&#60;/script&#62;",
            "\\u003cscript\\u003erun=1\\u003c/script\\u003e",
            "${run=1}",
            "#{T(java.lang.System).setProperty('run','1')}",
            "[[${T(java.lang.System).setProperty('run','1')}]]",
            "__${T(java.lang.System).setProperty('run','1')}__::.x",
            "{{constructor.constructor('run=1')()}}",
            "' onmouseover='run=1' autofocus onfocus='run=1",
            "\" onmouseover=\"run=1\" autofocus onfocus=\"run=1");

    private Payloads() {}
}
