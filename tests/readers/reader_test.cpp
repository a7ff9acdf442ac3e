// The reader itself, on texts written by hand: a sound one reads clean, each planted fault is found.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "readers/step_bodies.h"
#include "readers/step_curves.h"
#include "readers/step_file.h"
#include "readers/step_products.h"
#include "readers/texts.h"

namespace visewright::readers {
namespace {

using readers_tests::file_of;
using readers_tests::nest;
using readers_tests::wedge;
using readers_tests::with;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

Body body_of(const std::string& text) {
  const StepFile file = read_step(text);
  EXPECT_THAT(file.problems, IsEmpty());
  return read_bodies(file).at(0);
}

TEST(StepText, ReadsEveryKindOfParameter) {
  const StepFile file =
      read_step(file_of("#7 = A('it''s \\\\ \\X2\\00D86728\\X0\\ \\X4\\0001F529\\X0\\',-1.5E-3,.T.,$,*,(#7,()),B(3));\n"
                        "#8=(C(1) D());"));
  EXPECT_THAT(file.problems, IsEmpty());
  EXPECT_EQ(file.schema(), "AUTOMOTIVE_DESIGN");
  const auto& v = file.at(7)->records.front().values;
  ASSERT_EQ(v.size(), 7u);
  EXPECT_EQ(v[0].text, "it's \\ Ø木 🔩");
  EXPECT_EQ(v[1].number, -0.0015);
  EXPECT_EQ(v[2].text, "T");
  EXPECT_EQ(v[3].kind, Value::Kind::missing);
  EXPECT_EQ(v[4].kind, Value::Kind::derived);
  EXPECT_EQ(file.at(v[5].items[0]), file.at(7));
  EXPECT_EQ(v[6].items[0].number, 3);
  EXPECT_TRUE(file.at(8)->is("C") && file.at(8)->is("D") && !file.at(8)->is("A"));
}

TEST(StepText, JoinsATextOverLines) {
  EXPECT_EQ(read_step(file_of("#1=A('one\ntwo');")).at(1)->records.front().values[0].text, "onetwo");
}

TEST(StepText, FindsPlantedFaults) {
  EXPECT_THAT(read_step(with(wedge(), "VERTEX_POINT('',#6)", "VERTEX_POINT('',#999)")).problems,
              Contains(HasSubstr("#16 refers to #999")));
  EXPECT_THAT(read_step(file_of("#1=A(); #1=B();")).problems, Contains(HasSubstr("stands twice")));
  EXPECT_THAT(read_step(file_of("#1=A('\xC3\xA9');")).problems, Contains(HasSubstr("not ASCII")));
  EXPECT_THAT(read_step(file_of("#1=A('open);")).problems, Contains(HasSubstr("without end")));
  EXPECT_THAT(read_step(file_of("#1=A(1,);")).problems, Contains(HasSubstr("value")));
  EXPECT_THAT(read_step("").problems, testing::Not(IsEmpty()));
  const std::string whole = wedge();
  EXPECT_THAT(read_step(whole.substr(0, whole.size() / 2)).problems, testing::Not(IsEmpty()));
}

// Half of 2 × 3 × 4.
TEST(StepBodies, ReadAWedge) {
  const Body body = body_of(wedge());
  EXPECT_THAT(body.problems, IsEmpty());
  EXPECT_EQ(body.faces, 5u);
  EXPECT_EQ(body.edges, 9u);
  EXPECT_EQ(body.vertices, 6u);
  EXPECT_EQ(body.holes(), 0);
  EXPECT_NEAR(body.volume_mm3.value(), 12, 1e-12);
  EXPECT_LT(body.spread_mm3, 1e-12);
}

TEST(StepBodies, FindPlantedFaults) {
  const auto problems = [](const std::string& from, const std::string& to) {
    return read_bodies(read_step(with(wedge(), from, to))).at(0).problems;
  };
  // A face twice: its edges are used three times.
  EXPECT_THAT(problems("(#67,#77,#88,#98,#108)", "(#67,#77,#88,#98,#108,#108)"),
              Contains(HasSubstr("edge #59 is used 2 times")));
  EXPECT_THAT(problems("(#67,#77,#88,#98,#108)", "(#67,#77,#88,#98)"), Contains(HasSubstr("edge #59 is used 0 times")));
  EXPECT_THAT(problems("#72=ORIENTED_EDGE('',*,*,#54,.T.)", "#72=ORIENTED_EDGE('',*,*,#54,.F.)"),
              Contains(HasSubstr("does not close")));
  EXPECT_THAT(problems("(#76),#71,.T.", "(#76),#71,.F."), Contains(HasSubstr("face #77 is turned against its rim")));
  EXPECT_THAT(problems("#4=CARTESIAN_POINT('',(0.,0.,4.))", "#4=CARTESIAN_POINT('',(0.,0.00001,4.))"),
              Contains(HasSubstr("off it")));
  EXPECT_THAT(problems("#47=LINE('',#1,#33)", "#47=LINE('',#1,#31)"), Contains(HasSubstr("a corner of edge #57")));
  EXPECT_THAT(problems("#61=PLANE('',#60)", "#61=PLANE('',#70)"), Contains(HasSubstr("a corner of face #67")));
}

TEST(StepProducts, ReadTwoUsesOfOneProduct) {
  const StepFile file = read_step(nest());
  EXPECT_THAT(file.problems, IsEmpty());
  const Products found = read_products(file);
  EXPECT_THAT(found.problems, IsEmpty());
  ASSERT_EQ(found.products.size(), 2u);
  const std::size_t outer = found.by_id("1").value(), inner = found.by_id("2").value();
  EXPECT_EQ(found.products[inner].name, "inner");
  EXPECT_THAT(found.roots(), testing::ElementsAre(outer));
  const auto places = found.everywhere(inner);
  ASSERT_EQ(places.size(), 2u);
  // The point (1, 2, 3), turned by 90° about z to (−2, 1, 3) and shifted by 10 along x.
  const Triple there = outside(places[0], {1, 2, 3}), here = outside(places[1], {1, 2, 3});
  EXPECT_NEAR(distance(there, {8, 1, 3}), 0, 1e-12);
  EXPECT_NEAR(distance(here, {1, 2, 3}), 0, 1e-12);
}

TEST(StepProducts, FindPlantedFaults) {
  const auto problems = [](const std::string& from, const std::string& to) {
    return read_products(read_step(with(nest(), from, to))).problems;
  };
  EXPECT_THAT(problems(".MILLI.", "$"), Contains(HasSubstr("not in millimetres")));
  EXPECT_THAT(problems("#54=CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(#53,#51)",
                       "#54=CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(#53,#41)"),
              Contains(HasSubstr("placed already")));
  EXPECT_THAT(problems("'as is','',#6,#16,$", "'as is','',#16,#16,$"), testing::Not(IsEmpty()));
  EXPECT_THAT(problems("PRODUCT('2','inner'", "PRODUCT('1','inner'"), Contains(HasSubstr("stands twice")));
}

// A quarter of the unit circle as a rational curve of degree two (weights 1, √½, 1): a textbook identity.
TEST(StepCurves, EvaluateARationalSpline) {
  const StepFile file = read_step(file_of(
      "#1=CARTESIAN_POINT('',(1.,0.,0.)); #2=CARTESIAN_POINT('',(1.,1.,0.)); #3=CARTESIAN_POINT('',(0.,1.,0.));\n"
      "#4=(BOUNDED_CURVE() B_SPLINE_CURVE(2,(#1,#2,#3),.UNSPECIFIED.,.F.,.F.) B_SPLINE_CURVE_WITH_KNOTS((3,3),(0.,2.),"
      ".UNSPECIFIED.) CURVE() GEOMETRIC_REPRESENTATION_ITEM() RATIONAL_B_SPLINE_CURVE((1.,0.70710678118654752,1.)) "
      "REPRESENTATION_ITEM(''));"));
  EXPECT_THAT(file.problems, IsEmpty());
  const Spline spline = spline_of(file, file.at(4)).value();
  for (double u = 0; u <= 2; u += 0.25) {
    const OnCurve p = at(spline, u);
    EXPECT_NEAR(std::hypot(p.point[0], p.point[1]), 1, 1e-15);
    EXPECT_NEAR(dot(p.point, p.rate), 0, 1e-14);
    EXPECT_GT(p.rate[1] * p.point[0] - p.rate[0] * p.point[1], 0);
  }
  EXPECT_NEAR(at(spline, 1).point[0], std::sqrt(0.5), 1e-15);
  const Curve curve = curve_of(file, file.at(4)).value();
  EXPECT_NEAR(curve.nearest({std::sqrt(2.0), std::sqrt(2.0), 5}), 1, 1e-6);
}

// Any cubic is its own spline: (u, u², u³) on the knots 0 0 0 0 1 1 1 1 has the poles (0,0,0), (⅓,0,0), (⅔,⅓,0),
// (1,1,1), by blossoming; splitting it at a knot moves no point.
TEST(StepCurves, EvaluateACubicSpline) {
  const Spline cubic{3, {{0, 0, 0}, {1.0 / 3, 0, 0}, {2.0 / 3, 1.0 / 3, 0}, {1, 1, 1}}, {}, {0, 0, 0, 0, 1, 1, 1, 1}};
  const Spline split{3,
                     {{0, 0, 0}, {1.0 / 6, 0, 0}, {0.5, 1.0 / 6, 0}, {5.0 / 6, 2.0 / 3, 0.5}, {1, 1, 1}},
                     {},
                     {0, 0, 0, 0, 0.5, 1, 1, 1, 1}};
  for (double u = 0; u <= 1; u += 0.125) {
    for (const Spline& s : {cubic, split}) {
      EXPECT_NEAR(distance(at(s, u).point, {u, u * u, u * u * u}), 0, 1e-15);
      EXPECT_NEAR(distance(at(s, u).rate, {1, 2 * u, 3 * u * u}), 0, 1e-14);
    }
  }
}

}  // namespace
}  // namespace visewright::readers
