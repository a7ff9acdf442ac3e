#include "cli/program.h"

int main(int count, char** words) { return visewright::cli::run(count, words); }
