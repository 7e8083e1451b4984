using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Litterfall.Store.Migrations
{
    /// <inheritdoc />
    public partial class Workshop : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Issued",
                columns: table => new
                {
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    OrderNumber = table.Column<int>(type: "INTEGER", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Issued", x => new { x.Kind, x.Number });
                }
            );

            migrationBuilder.CreateTable(
                name: "Lots",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Good = table.Column<string>(type: "TEXT", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Lots", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Records",
                columns: table => new
                {
                    Id = table
                        .Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Key = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    Who = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Records", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Movements",
                columns: table => new
                {
                    Id = table
                        .Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Lot = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Amount = table.Column<double>(type: "REAL", nullable: false),
                    Into = table.Column<string>(type: "TEXT", nullable: true),
                    Place = table.Column<string>(type: "TEXT", nullable: true),
                    Day = table.Column<int>(type: "INTEGER", nullable: false),
                    Who = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Reverses = table.Column<int>(type: "INTEGER", nullable: true),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Movements", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Movements_Lots_Lot",
                        column: x => x.Lot,
                        principalTable: "Lots",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateIndex(
                name: "IX_Issued_OrderNumber",
                table: "Issued",
                column: "OrderNumber"
            );

            migrationBuilder.CreateIndex(name: "IX_Lots_Good", table: "Lots", column: "Good");

            migrationBuilder.CreateIndex(name: "IX_Movements_Into", table: "Movements", column: "Into");

            migrationBuilder.CreateIndex(name: "IX_Movements_Lot", table: "Movements", column: "Lot");

            migrationBuilder.CreateIndex(
                name: "IX_Records_Kind_Key_Version",
                table: "Records",
                columns: new[] { "Kind", "Key", "Version" },
                unique: true
            );
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "Issued");

            migrationBuilder.DropTable(name: "Movements");

            migrationBuilder.DropTable(name: "Records");

            migrationBuilder.DropTable(name: "Lots");
        }
    }
}
