#include "outputs/sample.h"

#include "analysis/analyse.h"

namespace visewright::tests {
namespace {

using reasons::Basis;
using reasons::Size;

Size plain(double mm) { return Size{units::mm(mm), 0}; }

standards::MaterialRow material(std::string name, standards::MaterialKind kind, double density) {
  standards::MaterialRow row{};
  row.name = std::move(name);
  row.kind = kind;
  row.density_g_cm3 = density;
  return row;
}

parts::Part bought(std::string name, const standards::MaterialRow& of, std::string designation, int share_of,
                   double kg) {
  parts::Bought stock{std::move(designation), "its standard", &of, {}, {}, share_of, kg};
  parts::Prism block{geometry::region(geometry::rectangle({0, 0}, {30, 30})), {}, 0, 29};
  stock.shape.push_back(block);
  return {std::move(name), parts::Piece{std::move(stock), {}}, parts::Making::bought};
}

parts::Part nut_block(const std::string& side, const standards::MaterialRow& steel) {
  const auto nut = shared(bought("rear nut, " + side, steel, "long nut M20", 2, 0));
  parts::Part bar{"nut bar", parts::Piece{parts::Bar{&steel, {0, 0, 0}, {10, 110, 60}}, {}}, parts::Making::made};
  parts::Bead bead{"weld bead", {geometry::region(geometry::rectangle({0, 0}, {4, 2})), {}, 0, 10}};
  return {"nut block, " + side,
          parts::BuiltUp{{{nut, {}}, {shared(std::move(bar)), {}}}, {{parts::Joint::Kind::welded, {bead}}}, {}},
          parts::Making::made};
}

parts::Part front_jaw(const standards::MaterialRow& beech) {
  const auto backing = shared(board("backing", beech, {520, 185, 40}, {540, 195, 45}));
  const auto layer = shared(board("gear layer", beech, {520, 185, 32}, {540, 195, 36}));
  const auto blank =
      shared({"glued blank", parts::BuiltUp{{{backing, {}}, {layer, {}}}, {{parts::Joint::Kind::glued, {}}}, {}},
              parts::Making::made});
  const parts::Prism wedge{geometry::region(geometry::rectangle({0, 0}, {50, 35})), {}, 0, 20};
  const auto landing =
      shared({"landing block", parts::Piece{parts::Offcut{"glued blank", &beech, wedge}, {}}, parts::Making::made});
  return {"front jaw",
          parts::BuiltUp{{{blank, {}}, {landing, {}}, {landing, {}}}, {{parts::Joint::Kind::glued, {}}}, {}},
          parts::Making::made};
}

parts::Part bench(const standards::MaterialRow& beech) {
  const auto top =
      shared({"bench top", parts::Piece{parts::Existing{"bench top", &beech, {0, 0, 0}, {1500, 600, 60}}, {}},
              parts::Making::existing});
  const auto doubler = shared(board("doubler", beech, {290, 90, 18}, {300, 100, 20}));
  return {"bench", parts::BuiltUp{{{top, {}}, {doubler, {}}}, {}, {}}, parts::Making::existing};
}

}  // namespace

std::shared_ptr<const parts::Part> shared(parts::Part part) {
  return std::make_shared<const parts::Part>(std::move(part));
}

parts::Part board(std::string name, const standards::MaterialRow& wood, geometry::Vector size, geometry::Vector rough) {
  return {std::move(name), parts::Piece{parts::Board{&wood, {0, 0, 0}, size, rough}, {}}, parts::Making::made};
}

std::vector<outputs::File> written(const outputs::Output& output, const Sample& sample) {
  base::Silence silence;
  return output.write(sample.facts(), silence).value();
}

Sample::Sample()
    : beech(material("beech", standards::MaterialKind::wood, 0.72)),
      steel(material("steel", standards::MaterialKind::metal, 7.85)),
      petg(material("PETG", standards::MaterialKind::plastic, 1.27)) {
  m20.designation = "M20";
  m20.major = units::mm(20);
  m20.lead = m20.pitch = units::mm(2.5);
  m20.mean = units::mm(18.376);
  m20.source = {"ISO 261", "computed"};
  set_train(3);
  fill_plan();
  fill_parts();
  fill_stock();
  figures.gears.resize(plan.train.gears.size());
  figures.moving_mass_kg = analysis::moving_mass_kg(assembly);
  using reasons::judged, reasons::Unit, reasons::Better, reasons::Verdict;
  findings = {judged(backing_finding, 40, 10, Unit::mm, Better::larger, Verdict::fail),
              judged(speed_finding, 100, 60, Unit::count, Better::smaller, Verdict::caution),
              judged(parity_finding, 4, 5, Unit::count, Better::larger, Verdict::fail, {"drive gear", "lead screw"},
                     reasons::Where{250, true, std::array<double, 3>{1, -2, 3}})};
  findings[0].certified = true;
}

void Sample::set_train(double m) {
  reasons::Ledger& ledger = plan.ledger = {};
  layout::Train& train = plan.train = {};
  train.module = ledger.length("train.module", units::mm(m), Basis::given, module_rule, {}, {0, 4, 9});
  train.pressure_angle.value = units::degrees(20);
  train.backlash = plain(0.45);
  train.face_width = plain(24);
  train.material = &petg;
  train.rear_out = plain(44.5);
  train.front_out = plain(68.5);
  train.spacing = plain(4 * 30 * m);
  for (int i = 0; i < 5; ++i) {
    layout::Gear gear;
    const std::string name = "train.gears." + std::to_string(i + 1);
    gear.teeth = ledger.count(name + ".teeth", 30, Basis::given, module_rule, {}, {0, 3, 9});
    gear.tip = ledger.length(name + ".tip_diameter", units::mm(m * 32), Basis::derived, tip_rule,
                             {train.module.id, gear.teeth.id});
    gear.root = plain(m * 27.5);
    gear.pitch_diameter = plain(m * 30);
    gear.centre_x = plain(30 * m * (i - 2));
    gear.pocket = plain(m * 32 + 4);
    gear.phase.value = units::degrees(i % 2 == 0 ? 181 : 7);
    gear.drive = i == 0 || i == 4;
    gear.sense = i % 2 == 0 ? 1 : -1;
    train.gears.push_back(gear);
    if (i == 0) continue;
    layout::Mesh mesh;
    mesh.centre_distance = plain(30 * m);
    mesh.backlash = plain(0.45);
    mesh.normal_backlash = plain(0.422861679);
    mesh.tip_clearance = plain(0.25 * m);
    mesh.operating_angle.value = units::degrees(20);
    mesh.contact_ratio.value = 1.65;
    train.meshes.push_back(mesh);
  }
  plan.front_jaw.backing =
      ledger.length("front_jaw.backing", units::mm(40), Basis::derived, backing_rule, {plan.train.gears[0].tip.id});
  (void)ledger.ratio("assume.thread_friction", reasons::Unit::one, 0.15, Basis::assumed, friction_rule);
  ledger.choice("screw.thread", "M20", Basis::given, thread_rule, {0, 7, 10});
}

void Sample::fill_plan() {
  plan.screw.thread = &m20;
  plan.screw.strength_class = "8.8";
  plan.screw.diameter = plain(20);
  plan.screw.length = plain(475);
  plan.screw.tail_out = plain(-344);
  plan.screw.front_out = plain(131);
  plan.screw.left_hand = {false, true};
  plan.screw.closes_clockwise = {true, false};
  plan.collar.flange_thickness = plain(3);
  plan.collar.nut_height = plain(18);
  plan.collar.thrust_thickness = plain(4);
  plan.bearing.width = plain(9);
  plan.keeper.rear_out = plain(69);
  plan.keeper.thickness = plain(1);
  plan.wheel.hub_rear_out = plain(86);
  plan.wheel.hub_front_out = plain(131);
  plan.wheel.rim_rear_out = plain(111);
  plan.wheel.rim_thickness = plain(20);
  plan.front_jaw.backing_rear_out = plain(3);
  plan.front_jaw.joint_out = plain(43);
  plan.front_jaw.front_out = plain(75);
  plan.cover.rear_out = plain(75);
  plan.cover.thickness = plain(8);
  plan.cover.seat_depth = plain(4.3);
  plan.lining.thickness = plain(3);
  plan.rear_jaw.rear_out = plain(-39);
  plan.rear_jaw.front_out = plain(-3);
  plan.rear_nut.rear_out = plain(-78);
  plan.rear_nut.length = plain(29);
  plan.rear_nut.bar_rear_out = plain(-49);
  plan.rear_nut.bar_thickness = plain(10);
  plan.bench.has_apron = plan.bench.has_doubler = true;
  plan.bench.apron_front_out = plain(-88);
  plan.bench.apron_thickness = plain(25);
  plan.bench.doubler = plain(18);
  plan.use = {plain(250), plain(253), plain(131), plain(200), plain(344), plain(324)};
  plan.screws = {"screws", {{"left", {-180, 0}}, {"right", {180, 0}}}};
}

void Sample::fill_parts() {
  using assembly::Group;
  const parts::Part screw{"lead screw", parts::Piece{parts::Rod{&steel, 20, 475, &m20, false}, {}},
                          parts::Making::made};
  parts::Part gear{"drive gear", parts::Piece{parts::Printed{&petg}, {}}, parts::Making::printed};
  const parts::Layer disc{geometry::region(geometry::rectangle({0, 0}, {90, 80})), 0, 24};
  std::get<parts::Piece>(gear.made).operations.push_back({"print", parts::Print{{disc}}, {}, {}, nullptr});
  assembly.parts = {shared(bench(beech)),
                    shared(front_jaw(beech)),
                    shared(nut_block("left", steel)),
                    shared(nut_block("right", steel)),
                    shared(screw),
                    shared(gear),
                    shared(board("spare board", beech, {10, 10, 10}, {12, 12, 12})),
                    shared(bought("mounting screw", steel, "wood screw 6 x 90, \"brass\"", 1, 0.05))};
  for (const auto& part : assembly.parts) assembly.mass_kg.push_back(parts::mass_kg(*part));
  const auto place = [&](std::uint32_t part, const std::string& name, Group group) {
    assembly::Placed placed;
    placed.part = part;
    placed.name = name;
    placed.group = group;
    assembly.placed.push_back(placed);
  };
  place(0, "bench", Group::fixed);
  place(1, "front jaw", Group::moving);
  place(2, "nut block, left", Group::fixed);
  place(3, "nut block, right", Group::fixed);
  for (const char* side : {"left", "right"}) {
    place(4, std::string("lead screw, ") + side, Group::turning);
    place(5, std::string("drive gear, ") + side, Group::turning);
  }
  for (int i = 1; i <= 8; ++i) place(7, "mounting screw " + std::to_string(i), Group::fixed);
  assembly.opening_max_mm = 253;
}

void Sample::fill_stock() {
  const auto piece = [&](const char* kind, const char* of, std::vector<double> mm, double price) {
    design::StockPiece entry;
    entry.kind.value = kind;
    entry.material.value = of;
    for (const double size : mm) entry.size.value.push_back(units::mm(size));
    entry.price = design::Given<double>{price, {}};
    design.stock.push_back(entry);
  };
  piece("board", "beech", {1100, 200, 50}, 40);
  piece("threaded rod", "M20", {1000}, 12);
  piece("long nut M20", "steel", {}, 3.5);
  piece("wood screw 6 x 90, \"brass\"", "brass", {}, 0.2);
}

}  // namespace visewright::tests
