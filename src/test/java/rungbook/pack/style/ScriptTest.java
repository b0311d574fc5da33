package rungbook.pack.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scripts get smaller and mean the same; what they do then, the tests in a browser say. */
class ScriptTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
      "a = b  +  c ; // why|a=b+c;",
      "a = b + +c; d = e - -f; g++ + h|a=b+ +c;d=e- -f;g++ +h",
      "return  a / b / c|return a/b/c",
      "x = / [/'\"] \\/ /g.test( y )|x=/ [/'\"] \\/ /g.test(y)",
      "say( 'a  //  b' , \"it's\" )|say('a  //  b',\"it's\")",
      "if (a) b = .5 * 0x1F; else c = 1.5e3|if(a)b=.5*0x1F;else c=1.5e3",
      "a /* one */ = 1|a=1"})
  void whiteSpaceAndCommentsGo(String script, String smaller) {
    assertEquals(smaller, Minified.script(script));
  }

  @Test
  void lineEndsStayWhereTheyCanEndAStatement() {
    assertEquals("a()\nb()", Minified.script("  a()\n\n  b()\n"));
    assertEquals("a=[1,2]\n++b", Minified.script("a = [1,\n  2]\n++b"));
    assertEquals("a=b+c", Minified.script("a = b +\n  c"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
      "const first = 1, second = f(2, 3); g(first, second)|let a=1,b=f(2,3);g(a,b)",
      "const first = { second: 1 }, second = first.second|let a={second:1},b=a.second",
      "function sum(one, other) { return one + other + one; }|function c(a,b){return a+b+a}",
      "const text = 'text', a = 1; f(text)|let b='text',a=1;f(b)",
      "try { f(); } catch (failed) { g(failed); }|try{f()}catch(a){g(a)}",
      "for (const each of all) f(each ? each : 0)|for(let a of all)f(a?a:0)",
      "window.count = count|window.count=count"})
  void declaredNamesGetShorterAndPropertiesStay(String script, String smaller) {
    assertEquals(smaller, Minified.function(script));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
      "f(function () { g(); })|f(()=>{g()})",
      "f(function (x) { return x * 2; }, 1)|f(x=>x*2,1)",
      "f(function (x, y) { return g(x, function () { return y; }); })|f((x,y)=>g(x,()=>y))",
      "f(function () { return { g: 1 }; })|f(()=>{return{g:1}})",
      "f(function () { return; })|f(()=>{return})",
      "f(function (x) { g(); return x; })|f(x=>{g();return x})",
      "f(function () { return this.g; })|f(function(){return this.g})",
      "a = b && function () { return 1; };|a=b&&function(){return 1};",
      "f(function () { return 1; }.g)|f(function(){return 1}.g)"})
  void functionsBecomeArrowsWhereThatMeansTheSame(String script, String smaller) {
    assertEquals(smaller, Minified.function(script));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
      "const a = 1; let b = 2; f(); const c = 3;|let a=1,b=2;f();let c=3;",
      "const a = { g: 1 }; const b = 2;|let a={g:1},b=2;",
      "const a = function () { const c = 1; f(c); }; const b = 2;|let a=()=>{let c=1;f(c)},b=2;",
      "for (let i = 0; i < 3; i++) f(i); const b = 2;|for(let i=0;i<3;i++)f(i);let b=2;",
      "if (a) { while (f()); } else { g(); }|if(a){while(f());}else{g()}",
      "f(true, x.true, { true: false })|f(!0,x.true,{true:!1})",
      "f(a ? true : false)|f(a?!0:!1)",
      "function f() { g(); }; function h() { g(); }|function f(){g()};function h(){g()}"})
  void whatEveryScriptHasIsWrittenInFewerLetters(String script, String smaller) {
    assertEquals(smaller, Minified.function(script));
  }

  @Test
  void aFunctionWithANameNeedsNoLineEndAfterIt() {
    assertEquals("f();function a(){g()}function b(){g()}let c=1",
        Minified.function("f();\nfunction a() {\n  g();\n}\nfunction b() {\n  g();\n}\nconst c = 1"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {"const {a} = b;", "f({a, b});",
      "const f = x => 1;", "f(`x`)",
      "f(function (window) {});",
      "/* one", "f('one"})
  void whatIsNotToldApartIsRefused(String script) {
    assertThrows(IllegalArgumentException.class, () -> Minified.function(script + "\nb"));
  }

  @Test
  void moreNamesThanLettersStayApart() {
    var script = new StringBuilder();
    var used = new StringBuilder();
    for (int i = 0; i < 3000; i++) {
      script.append("const name").append(i).append(" = 1;");
      used.append("f(name").append(i).append(");");
    }
    String made = Minified.function(script.append(used).toString());
    assertEquals(3000, made.lines().flatMap(line -> Pattern.compile("([a-zA-Z]+)=1").matcher(line)
        .results().map(found -> found.group(1))).distinct().count());
  }
}
