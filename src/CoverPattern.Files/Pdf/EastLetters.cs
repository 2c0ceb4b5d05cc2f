using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Files.Pdf;

/// <summary>Letters of Helvetica beyond Latin-1: those of the languages between the Baltic and the Bosporus, and a few signs.</summary>
/// <remarks>
/// The font's public metrics name and measure them (from memory; the tests hold each against another library's). A one-byte font
/// has no room for them beside Latin-1, so papers have the same font a second time with these at its codes.
/// </remarks>
internal static class EastLetters
{
    private const int FirstCode = 33;

    // Letter, its name in the font, its width in thousandths; of two letters that share a name the first is the one readers give back.
    private const string Table = """
        Ă Abreve 667;ă abreve 556;Ā Amacron 667;ā amacron 556;Ą Aogonek 667;ą aogonek 556;Ć Cacute 722;ć cacute 500;Č Ccaron 722;č ccaron 500;
        Ď Dcaron 722;ď dcaron 643;Đ Dcroat 722;đ dcroat 556;Ě Ecaron 667;ě ecaron 556;Ė Edotaccent 667;ė edotaccent 556;Ē Emacron 667;ē emacron 556;
        Ę Eogonek 667;ę eogonek 556;Ğ Gbreve 778;ğ gbreve 556;Ģ Gcommaaccent 778;ģ gcommaaccent 556;İ Idotaccent 278;ı dotlessi 278;Ī Imacron 278;ī imacron 278;
        Į Iogonek 278;į iogonek 222;Ķ Kcommaaccent 667;ķ kcommaaccent 500;Ĺ Lacute 556;ĺ lacute 222;Ľ Lcaron 556;ľ lcaron 299;Ļ Lcommaaccent 556;ļ lcommaaccent 222;
        Ł Lslash 556;ł lslash 222;Ń Nacute 722;ń nacute 556;Ň Ncaron 722;ň ncaron 556;Ņ Ncommaaccent 722;ņ ncommaaccent 556;Œ OE 1000;œ oe 944;
        Ő Ohungarumlaut 778;ő ohungarumlaut 556;Ō Omacron 778;ō omacron 556;Ŕ Racute 722;ŕ racute 333;Ř Rcaron 722;ř rcaron 333;Ŗ Rcommaaccent 722;ŗ rcommaaccent 333;
        Ś Sacute 667;ś sacute 500;Š Scaron 667;š scaron 500;Ş Scedilla 667;ş scedilla 500;Ș Scommaaccent 667;ș scommaaccent 500;Ť Tcaron 611;ť tcaron 317;
        Ţ Tcommaaccent 611;ţ tcommaaccent 278;Ț Tcommaaccent 611;ț tcommaaccent 278;Ű Uhungarumlaut 722;ű uhungarumlaut 556;Ū Umacron 722;ū umacron 556;
        Ų Uogonek 722;ų uogonek 556;Ů Uring 722;ů uring 556;Ÿ Ydieresis 667;Ź Zacute 611;ź zacute 500;Ž Zcaron 611;ž zcaron 500;Ż Zdotaccent 611;ż zdotaccent 500;
        – endash 556;— emdash 1000;‘ quoteleft 222;’ quoteright 222;‚ quotesinglbase 222;“ quotedblleft 333;” quotedblright 333;„ quotedblbase 333;… ellipsis 1000;€ Euro 556
        """;

    private static readonly ImmutableArray<(char Letter, string Name, int Width)> All =
    [
        .. Table.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(entry => entry.Split(' '))
            .Select(parts => (parts[0][0], parts[1], int.Parse(parts[2], CultureInfo.InvariantCulture))),
    ];

    private static readonly ImmutableDictionary<char, int> Places = All.Select((entry, i) => (entry.Letter, i)).ToImmutableDictionary(pair => pair.Letter, pair => pair.i);

    /// <summary>The encoding of the second font, as the file says it.</summary>
    internal static string Encoding { get; } = FormattableString.Invariant($"<< /Type /Encoding /Differences [{FirstCode}{string.Concat(All.Select(entry => " /" + entry.Name))}] >>");

    /// <summary>All of them.</summary>
    internal static ImmutableArray<char> Letters => [.. All.Select(entry => entry.Letter)];

    /// <summary>Width in thousandths of the font's size; 0 where the font has no such letter.</summary>
    internal static int Width(int letter) => letter <= char.MaxValue && Places.TryGetValue((char)letter, out var place) ? All[place].Width : 0;

    /// <summary>The code of a letter in the second font; the letter is one of these.</summary>
    internal static char Code(char letter) => (char)(FirstCode + Places[letter]);
}
