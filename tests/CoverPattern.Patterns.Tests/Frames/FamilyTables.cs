using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Patterns.Tests.Frames;

/// <summary>Chord factors, axial angles and dihedrals of the octahedron's class I and of both solids' class II.</summary>
/// <remarks>Own calculation in double precision made apart from this project, printed to five and three decimals; class II by convex hull.</remarks>
internal static class FamilyTables
{
    /// <summary>One line a class: solid and class, frequency, label, chord factor, axial angle and dihedrals in degrees, struts on the ball, struts on the half.</summary>
    internal const string Classes = """
        oct1 2 A 0.76537 22.500 138.118 24 16
        oct1 2 B 1.00000 30.000 155.626 24 12
        oct1 3 A 0.45951 13.283 154.121 24 16
        oct1 3 B 0.63246 18.435 154.208x12,166.095x24 36 20
        oct1 3 C 0.67142 19.616 158.062 48 24
        oct1 4 A 0.32036 9.217 161.799 24 16
        oct1 4 B 0.43887 12.676 162.578 48 24
        oct1 4 C 0.44721 12.921 172.436 24 12
        oct1 4 D 0.45951 13.283 162.163 24 16
        oct1 4 E 0.51764 15.000 164.131 48 24
        oct1 4 F 0.57735 16.779 162.904 24 12
        oct1 5 A 0.24437 7.018 166.068 24 16
        oct1 5 B 0.31415 9.037 166.199 48 24
        oct1 5 C 0.34134 9.827 166.330 24 16
        oct1 5 D 0.34300 9.875 175.442 24 12
        oct1 5 E 0.38859 11.203 165.407 48 24
        oct1 5 F 0.39223 11.310 167.070 12 8
        oct1 5 G 0.40033 11.547 169.464 48 24
        oct1 5 H 0.43696 12.620 166.366 48 24
        oct1 5 I 0.47140 13.633 165.542 24 12
        oct1 6 A 0.19708 5.655 168.745 24 16
        oct1 6 B 0.24197 6.949 168.735 48 24
        oct1 6 C 0.26547 7.628 168.911 24 16
        oct1 6 D 0.27735 7.971 176.990 24 12
        oct1 6 E 0.29603 8.512 167.489 48 24
        oct1 6 F 0.32036 9.217 169.692x24,172.894x48 72 40
        oct1 6 G 0.33193 9.553 168.810 96 48
        oct1 6 H 0.37796 10.893 169.151 48 24
        oct1 6 I 0.38518 11.104 167.311 48 24
        oct1 7 A 0.16496 4.731 170.570 24 16
        oct1 7 B 0.19598 5.623 170.532 48 24
        oct1 7 C 0.21494 6.170 170.677 24 16
        oct1 7 D 0.23250 6.676 177.874 24 12
        oct1 7 E 0.23440 6.730 169.365 48 24
        oct1 7 F 0.26112 7.502 170.568 48 24
        oct1 7 G 0.26224 7.534 171.296 24 16
        oct1 7 H 0.26495 7.613 174.996 48 24
        oct1 7 I 0.27001 7.759 169.453 48 24
        oct1 7 J 0.28228 8.114 171.639 48 24
        oct1 7 K 0.28284 8.130 171.712 12 8
        oct1 7 L 0.30770 8.850 169.078 48 24
        oct1 7 M 0.30861 8.876 172.036 24 12
        oct1 7 N 0.31244 8.988 170.970 48 24
        oct1 7 O 0.32892 9.466 169.501 48 24
        oct1 7 P 0.34300 9.875 169.111 24 12
        oct1 8 A 0.14178 4.065 171.890 24 16
        oct1 8 B 0.16439 4.715 171.851 48 24
        oct1 8 C 0.17961 5.152 171.962 24 16
        oct1 8 D 0.19238 5.520 170.866 48 24
        oct1 8 E 0.20000 5.739 178.421 24 12
        oct1 8 F 0.21272 6.105 171.870 48 24
        oct1 8 G 0.21823 6.264 172.420 24 16
        oct1 8 H 0.22192 6.371 170.495 48 24
        oct1 8 I 0.22504 6.460 176.322 48 24
        oct1 8 J 0.24197 6.949 171.442 48 24
        oct1 8 K 0.24229 6.958 173.706 48 24
        oct1 8 L 0.24437 7.018 172.932 24 16
        oct1 8 M 0.24915 7.156 170.592 48 24
        oct1 8 N 0.25786 7.408 172.218 48 24
        oct1 8 O 0.25820 7.418 174.064 24 12
        oct1 8 P 0.27685 7.957 170.322 48 24
        oct1 8 Q 0.27735 7.971 172.454 24 12
        oct1 8 R 0.28011 8.051 171.681 48 24
        oct1 8 S 0.29180 8.389 170.620 48 24
        oct1 8 T 0.30151 8.671 170.340 24 12
        ico2 2 A 0.64085 18.689 153.790 60 -
        ico2 2 B 0.71364 20.905 161.946 30 -
        ico2 4 A 0.28651 8.236 168.116 60 -
        ico2 4 B 0.33333 9.594 170.067 60 -
        ico2 4 C 0.35682 10.277 168.225 120 -
        ico2 4 D 0.36284 10.453 168.041 120 -
        ico2 6 A 0.18106 5.194 172.474 60 -
        ico2 6 B 0.21197 6.084 173.742 60 -
        ico2 6 C 0.22125 6.351 171.813 60 -
        ico2 6 D 0.22841 6.558 172.794 120 -
        ico2 6 E 0.23052 6.619 172.117 30 -
        ico2 6 F 0.23279 6.684 171.970x120,172.277x120 240 -
        ico2 6 G 0.24677 7.087 172.323 120 -
        ico2 6 H 0.24870 7.143 171.787 120 -
        oct2 2 A 0.91940 27.368 130.623 24 -
        oct2 2 B 1.15470 35.264 162.412 12 -
        oct2 4 A 0.33820 9.736 160.804 24 -
        oct2 4 B 0.47140 13.633 167.074 24 -
        oct2 4 C 0.57735 16.779 160.922 48 -
        oct2 4 D 0.60581 17.632 160.161 48 -
        oct2 6 A 0.19902 5.711 168.635 24 -
        oct2 6 B 0.28006 8.049 172.450 24 -
        oct2 6 C 0.31415 9.037 165.923 24 -
        oct2 6 D 0.34816 10.025 166.993 12 -
        oct2 6 E 0.34832 10.030 170.022 48 -
        oct2 6 F 0.36277 10.450 166.511x48,167.628x48 96 -
        oct2 6 G 0.42640 12.310 168.219 48 -
        oct2 6 H 0.43696 12.620 165.621 48 -
        """;

    public static IEnumerable<object[]> Balls() => Classes.Split('\n').Select(line => line.Split(' ')).Select(line => (line[0], line[1])).Distinct()
        .Select(ball => new object[] { ball.Item1, int.Parse(ball.Item2, System.Globalization.CultureInfo.InvariantCulture) });

    internal static IEnumerable<string[]> ClassesOf(string ball, int frequency) => Classes.Split('\n').Select(line => line.Split(' '))
        .Where(line => line[0] == ball && line[1] == FormattableString.Invariant($"{frequency}"));
}
